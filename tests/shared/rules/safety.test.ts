import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Fact } from '../../../shared/assess/assessment.ts';
import { MEASURES, possibleRangeSi } from '../../../shared/knowledge/measures/index.ts';
import type { Measure } from '../../../shared/knowledge/measure.ts';
import { MOVEMENTS } from '../../../shared/knowledge/movements/index.ts';
import { CONDITIONS, type Injury } from '../../../shared/model/injury.ts';
import { GRADES } from '../../../shared/model/screening.ts';
import { measured } from '../../../shared/quantity.ts';
import { liftedBy } from '../../../shared/rules/effects/liftedBy.ts';
import { evaluateRules, type JudgingOptions } from '../../../shared/rules/evaluate.ts';
import { SHIPPED_RULES } from '../../../shared/rules/shippedRules.ts';
import { injury } from './build.ts';

// The safety property of the design (promises 3 and 4), held over random histories and facts. Not compared with the
// program's own output: what is checked follows from the rules as data.

const RUNS = Number(process.env['SAFETY_RUNS'] ?? 400);
const rules = new Map(SHIPPED_RULES.map((rule) => [rule.id, rule]));
const used = new Set(SHIPPED_RULES.flatMap((rule) => rule.all.map((test) => test.measure)));
const places = [
  { movement: null, phase: null },
  ...MOVEMENTS.flatMap((movement) => movement.phases.map((phase) => ({ movement: movement.id, phase: phase.id }))),
];

const factOf = (measure: Measure): fc.Arbitrary<Fact> => {
  const range = possibleRangeSi(measure.id);
  const value =
    measure.kind === 'flag'
      ? fc.boolean().map((flag) => ({ kind: 'flag', flag }) as const)
      : measure.kind === 'grade'
        ? fc.constantFrom(...GRADES).map((grade) => ({ kind: 'grade', grade }) as const)
        : fc.double({ min: range?.[0] ?? 0, max: range?.[1] ?? 1, noNaN: true }).map(
            (x) =>
              ({
                kind: 'number',
                reading: measured(
                  'x',
                  measure.label,
                  isPain(measure.id) ? Math.round(x) : x,
                  measure.unit ?? '1',
                  'none',
                ),
              }) as const,
          );
  return fc
    .tuple(
      fc.oneof(
        { weight: 5, arbitrary: value },
        { weight: 1, arbitrary: fc.constant({ kind: 'unknown', reason: 'lost' } as const) },
      ),
      fc.constantFrom(...places),
      fc.constantFrom('left', 'right', 'none' as const),
    )
    .map(([factValue, place, side]) => ({
      key: [measure.id, place.movement ?? 'case', place.phase ?? '', side].join('/'),
      measure: measure.id,
      label: measure.label,
      movement: place.movement,
      phase: isPain(measure.id) ? null : place.phase,
      side,
      value: factValue,
      displayUnit: measure.displayUnit,
      height: null,
      takenOn: '2026-11-18',
      from: { kind: place.movement === null ? 'screeningSession' : 'movementTrial', id: place.movement ?? 'session' },
      provenance: 'random',
    }));
};
const isPain = (id: string) => id.startsWith('pain.');

const facts = fc.uniqueArray(fc.constantFrom(...MEASURES.filter((measure) => used.has(measure.id))).chain(factOf), {
  maxLength: 60,
  selector: (fact) => fact.key,
});
const history: fc.Arbitrary<Injury[]> = fc
  .array(
    fc
      .record({
        condition: fc.constantFrom(...CONDITIONS),
        status: fc.constantFrom('current', 'recovering', 'resolved' as const),
        clearedBy: fc.constantFrom('', 'Dr Example'),
        clearedOn: fc.constantFrom(null, '2026-01-01'),
        restrictions: fc.constantFrom('', 'No contact.'),
      })
      .map(({ condition, ...more }) => injury(condition, more)),
    { maxLength: 4 },
  )
  .map((list) => list.map((one, i) => ({ ...one, id: `injury-${i}` })));
const options: fc.Arbitrary<JudgingOptions> = fc.record({
  referenceSex: fc.constantFrom('female', 'male', 'no-reference', null),
  birthDate: fc.constantFrom('1998-05-01', '2013-05-01', null),
});

test(`${RUNS} random cases: nothing is printed that an injury on file stops or replaces`, () => {
  fc.assert(
    fc.property(facts, history, options, (known, injuries, who) => {
      const inForce = new Set(injuries.filter((one) => liftedBy(one) === null).map((one) => one.condition));
      for (const finding of evaluateRules(SHIPPED_RULES, known, injuries, who)) {
        if (finding.kind === 'referral' || finding.kind === 'caution') continue;
        const rule = rules.get(finding.ruleId);
        const stated = (rule?.effects ?? []).filter((one) => inForce.has(one.condition));
        const printed = [finding.intervention ?? '', ...finding.adjustments].join('\n');
        const isLimited = stated.some((one) => one.effect === 'stop' || one.effect === 'replace');
        if (stated.some((one) => one.effect === 'stop')) expect(finding.intervention).toBeNull();
        if (isLimited && finding.kind !== 'confirmation' && rule !== undefined) {
          expect(printed).not.toContain(rule.intervention.split('{')[0]);
        }
        if (isLimited) expect(finding.outcome).not.toBe('confirmed');
        for (const effect of stated) {
          const isUnsafe = effect.unsafeFor.some((one) => inForce.has(one));
          if (isUnsafe && effect.change !== '') expect(printed).not.toContain(effect.change);
        }
      }
    }),
    { numRuns: RUNS },
  );
});

test(`${RUNS} random cases: no confirmation with pain, or without pain recorded, in the same trial`, () => {
  fc.assert(
    fc.property(facts, history, options, (known, injuries, who) => {
      for (const finding of evaluateRules(SHIPPED_RULES, known, injuries, who)) {
        if (finding.kind !== 'confirmation' || finding.outcome === 'not-assessed' || finding.movement === 'any')
          continue;
        const pains = known.filter((one) => one.measure === 'pain.nrs' && one.movement === finding.movement);
        const values = pains.flatMap((one) =>
          one.value.kind === 'number' && 'value' in one.value.reading ? [one.value.reading.value] : [],
        );
        expect(values.length).toBeGreaterThan(0);
        expect(values.every((value) => value === 0)).toBe(true);
      }
    }),
    { numRuns: RUNS },
  );
});

test(`${RUNS} random cases: a missing value fires nothing, and every test of what fired is met`, () => {
  fc.assert(
    fc.property(facts, history, options, (known, injuries, who) => {
      const lost = new Set(known.filter((one) => one.value.kind === 'unknown').map((one) => one.key));
      for (const finding of evaluateRules(SHIPPED_RULES, known, injuries, who)) {
        if (finding.outcome === 'not-assessed') {
          expect(finding.intervention).toBeNull();
          expect(finding.needed).not.toBe('');
          continue;
        }
        for (const one of finding.tests) {
          expect(one.result).toBe('met');
          expect(one.factKey === null || lost.has(one.factKey)).toBe(false);
        }
      }
    }),
    { numRuns: RUNS },
  );
});

test(`${RUNS} random cases: a referral leaves no advice for the region it touches`, () => {
  fc.assert(
    fc.property(facts, history, options, (known, injuries, who) => {
      const findings = evaluateRules(SHIPPED_RULES, known, injuries, who);
      const hidesAll = findings.some(
        (one) =>
          one.outcome === 'referral' &&
          rules.get(one.ruleId)?.region === 'whole-body' &&
          rules.get(one.ruleId)?.movement === 'any',
      );
      if (!hidesAll) return;
      for (const one of findings) {
        if (one.kind === 'intervention' || one.kind === 'monitor') expect(one.intervention).toBeNull();
        expect(one.outcome).not.toBe('confirmed');
      }
    }),
    { numRuns: RUNS },
  );
});

test(`${RUNS} random cases: the order of rules, facts and history changes nothing`, () => {
  fc.assert(
    fc.property(facts, history, options, (known, injuries, who) => {
      const forward = evaluateRules(SHIPPED_RULES, known, injuries, who);
      const backward = evaluateRules(SHIPPED_RULES.toReversed(), known.toReversed(), injuries.toReversed(), who);
      expect(backward).toEqual(forward);
    }),
    { numRuns: RUNS },
  );
});
