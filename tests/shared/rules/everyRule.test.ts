import { describe, expect, test } from 'vitest';
import type { Fact, FactValue, Finding } from '../../../shared/assess/assessment.ts';
import { borderIn, measureById } from '../../../shared/knowledge/measures/index.ts';
import { regionGroup } from '../../../shared/knowledge/regions.ts';
import { isKnown, measured } from '../../../shared/quantity.ts';
import { strictestFor } from '../../../shared/rules/effects/historyEffects.ts';
import { evaluateRules } from '../../../shared/rules/evaluate.ts';
import type { Rule, Test } from '../../../shared/rules/rule.ts';
import { SHIPPED_RULES } from '../../../shared/rules/shippedRules.ts';
import { convert } from '../../../shared/units.ts';
import { ADULT_WOMAN, fact, injury } from './build.ts';

// For every rule: a case that fires it, cases that do not, one that cannot tell, one too close to call, and each
// injury effect. The expectation is read off the rule as data; what whole cases should give is in tests/vignettes.

const OWN_OUTCOME = {
  referral: 'referral',
  caution: 'caution',
  intervention: 'intervention',
  monitor: 'monitor',
  confirmation: 'confirmed',
} as const;

/** The limits of a test for the woman these cases are about, in its own unit. */
function limitsOf({ threshold }: Test): readonly number[] {
  if (typeof threshold === 'number') return [threshold];
  if (typeof threshold !== 'object') return [];
  return 'female' in threshold ? [threshold.female] : threshold;
}

function borderOf(test: Test): number {
  const measure = measureById(test.measure);
  return measure === null || test.unit === null ? 0 : (borderIn(measure, test.unit) ?? 0);
}

/** A number that meets the test, or fails it, `away` from the nearest limit. */
function numberFor(test: Test, isMet: boolean, away: number): number {
  const [low = 0, high = low] = limitsOf(test);
  switch (test.comparator) {
    case '<':
    case '<=':
      return isMet ? low - away : low + away;
    case '>':
    case '>=':
      return isMet ? low + away : low - away;
    case 'between':
      return isMet ? Math.min(low + away, (low + high) / 2) : high + away;
    case 'outside':
      return isMet ? high + away : (low + high) / 2;
    case 'is':
      return isMet ? low : low + away;
  }
}

function valueFor(test: Test, isMet: boolean, away: number): FactValue {
  if (typeof test.threshold === 'boolean') return { kind: 'flag', flag: test.threshold === isMet };
  if (typeof test.threshold === 'string') return { kind: 'grade', grade: isMet ? test.threshold : 'other' };
  const measure = measureById(test.measure);
  const unit = measure?.unit;
  if (unit === undefined || unit === null || test.unit === null) throw new Error(test.measure);
  const value = convert(numberFor(test, isMet, away), test.unit, unit);
  return { kind: 'number', reading: measured('x', test.measure, value, unit, 'none') };
}

/** The same reading with a standard uncertainty twice as wide as its way to the limit. */
function unsure(known: Fact, { measure: id, unit }: Test, away: number): Fact {
  const stored = measureById(id)?.unit;
  if (
    known.value.kind !== 'number' ||
    !isKnown(known.value.reading) ||
    stored === undefined ||
    stored === null ||
    unit === null
  )
    return known;
  const u = 2 * Math.abs(convert(away, unit, stored));
  return { ...known, value: { kind: 'number', reading: measured('x', id, known.value.reading.value, stored, u) } };
}

function factFor(rule: Rule, value: FactValue, test: Test): Fact {
  return rule.movement === 'any'
    ? fact(test.measure, value)
    : fact(test.measure, value, {
        movement: rule.movement,
        ...(test.measure.startsWith('pain.') ? {} : { phase: rule.phase }),
      });
}

/** Far enough from the limit to be sure of, and at least two units of it, so that one step of pain or of a count shows. */
const far = (test: Test) => Math.max(2 * borderOf(test), 0.05 * Math.abs(limitsOf(test)[0] ?? 0), 1e-3);

/** Two tests on one measure (a range in two halves) are met by one value between them. */
function facts(
  rule: Rule,
  change: (test: Test, i: number) => FactValue | null = (test) => valueFor(test, true, far(test)),
): Fact[] {
  const byMeasure = new Map<string, Fact>();
  for (const [i, test] of rule.all.entries()) {
    const value = change(test, i);
    if (value !== null && !byMeasure.has(test.measure)) byMeasure.set(test.measure, factFor(rule, value, test));
  }
  return [...byMeasure.values()];
}

const noPain = (rule: Rule): Fact[] =>
  rule.kind !== 'confirmation' || rule.all.some((one) => one.measure === 'pain.nrs')
    ? []
    : [
        rule.movement === 'any'
          ? fact(`pain.${regionGroup(rule.region)}`, 0)
          : fact('pain.nrs', 0, { movement: rule.movement }),
      ];

const judge = (
  rule: Rule,
  known: readonly Fact[],
  ...history: Parameters<typeof evaluateRules>[2]
): Finding | undefined => evaluateRules([rule], [...known, ...noPain(rule)], history, ADULT_WOMAN)[0];

const isCertain = (finding: Finding | undefined) => finding?.tests.every((one) => !one.isBorderline) === true;

describe.each(SHIPPED_RULES.map((rule) => [rule.id, rule] as const))('%s', (_, rule) => {
  const ownOutcome = OWN_OUTCOME[rule.kind];

  test('fires on what it asks for', () => {
    const finding = judge(rule, facts(rule));
    expect(finding?.ruleId).toBe(rule.id);
    expect(finding?.outcome).toBe(
      isCertain(finding) || rule.kind === 'referral' || rule.kind === 'caution' ? ownOutcome : 'borderline',
    );
    expect(finding?.finding).not.toMatch(/[{}]|undefined|NaN/);
  });

  test.each(rule.all.map((one, i) => [one.measure, i] as const))('is silent if %s is not so', (_measure, at) => {
    const bent = rule.all[at];
    if (bent === undefined) throw new Error('no test');
    const known = facts(rule, (one) =>
      one.measure === bent.measure ? valueFor(bent, false, far(bent)) : valueFor(one, true, far(one)),
    );
    expect(judge(rule, known)).toBeUndefined();
  });

  test('cannot tell without a value, and says what is needed', () => {
    const known = facts(rule, (one, i) =>
      i === 0 ? { kind: 'unknown', reason: 'nobody looked' } : valueFor(one, true, far(one)),
    );
    const finding = judge(rule, known);
    expect(finding?.outcome).toBe('not-assessed');
    expect(finding?.needed).toContain('nobody looked');
    expect(finding?.intervention).toBeNull();
  });

  const close = rule.all.find((one) => borderOf(one) > 0 && one.comparator !== 'is');
  if (close !== undefined) {
    test('is borderline close to a limit, by the error of the test', () => {
      const known = facts(rule, (one) => valueFor(one, true, one === close ? borderOf(one) / 4 : far(one)));
      expectBorderline(judge(rule, known));
    });
  }

  const counted = rule.all.find((one) => one.unit !== null && one.comparator !== 'is');
  if (counted !== undefined) {
    test('is borderline close to a limit, by the reading’s own uncertainty', () => {
      const away = far(counted) / 4;
      const known = facts(rule, (one) => valueFor(one, true, one === counted ? away : far(one)));
      expectBorderline(
        judge(
          rule,
          known.map((one) => (one.measure === counted.measure ? unsure(one, counted, away) : one)),
        ),
      );
    });
  }

  /** A referral close to its limit stays one, and says how sure it is: waiting for a second reading is not safe. */
  function expectBorderline(finding: Finding | undefined): void {
    expect(finding?.outcome).toBe(rule.kind === 'referral' ? 'referral' : 'borderline');
    const open = finding?.tests.filter((one) => one.isBorderline) ?? [];
    expect(open.length).toBeGreaterThan(0);
    // On the side that meets the test, so more likely past the limit than not; a narrow range holds less of the spread.
    for (const { chance, comparator } of open) {
      expect(chance).toBeGreaterThan(comparator === 'between' ? 0 : 0.5);
      expect(chance).toBeLessThan(1);
    }
  }

  if (rule.effects.length > 0 && (rule.kind === 'intervention' || rule.kind === 'monitor')) {
    test('each injury has its say', () => {
      for (const { condition } of rule.effects) {
        const stated = strictestFor(rule, condition);
        const finding = judge(rule, facts(rule), injury(condition));
        if (stated === null || finding === undefined) throw new Error(condition);
        switch (stated.effect) {
          case 'stop':
            expect([finding.outcome, finding.intervention], condition).toEqual(['stopped', null]);
            break;
          case 'replace':
            expect([finding.outcome, finding.intervention], condition).toEqual(['replaced', stated.change]);
            expect(finding.withheld?.because[0]?.condition).toBe(condition);
            break;
          case 'modify':
            expect(finding.adjustments, condition).toEqual([stated.change]);
            expect(['modified', 'borderline']).toContain(finding.outcome);
            break;
          case 'keep':
            expect(finding.adjustments, condition).toEqual([]);
            expect([ownOutcome, 'borderline']).toContain(finding.outcome);
        }
      }
    });
  }
});
