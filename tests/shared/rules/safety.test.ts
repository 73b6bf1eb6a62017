import * as fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { type Fact, type FactValue, OUTCOMES } from '../../../shared/assess/assessment.ts';
import { measureById } from '../../../shared/knowledge/measures/index.ts';
import { MOVEMENTS } from '../../../shared/knowledge/movements/index.ts';
import { REGION_GROUPS } from '../../../shared/knowledge/regions.ts';
import { CONDITIONS, type Injury } from '../../../shared/model/injury.ts';
import { GRADES } from '../../../shared/model/screening.ts';
import { measured } from '../../../shared/quantity.ts';
import { liftedBy } from '../../../shared/rules/effects/liftedBy.ts';
import { evaluateRules, type JudgingOptions } from '../../../shared/rules/evaluate.ts';
import { SHIPPED_RULES } from '../../../shared/rules/shippedRules.ts';
import { READERS, type Test } from '../../../shared/rules/rule.ts';
import { convert } from '../../../shared/units.ts';
import { injury } from './build.ts';

// The safety property of the design (promises 3 and 4), held over random histories and facts. Not compared with the
// program's own output: what is checked follows from the rules as data.

const RUNS = Number(process.env['SAFETY_RUNS'] ?? 400);
vi.setConfig({ testTimeout: 30_000 + 10 * RUNS });
const rules = new Map(SHIPPED_RULES.map((rule) => [rule.id, rule]));
const isPain = (id: string) => id.startsWith('pain.');

/** A value on either side of the test's limits, close by or far off; flags and grades at random; now and then lost. */
function valueFor(test: Test): fc.Arbitrary<FactValue> {
  const measure = measureById(test.measure);
  if (measure === null) throw new Error(test.measure);
  const lost = fc.constant<FactValue>({ kind: 'unknown', reason: 'lost' });
  const flag = fc.boolean().map((one): FactValue => ({ kind: 'flag', flag: one }));
  const grade = fc.constantFrom(...GRADES).map((one): FactValue => ({ kind: 'grade', grade: one }));
  if (measure.kind === 'flag') return fc.oneof({ weight: 6, arbitrary: flag }, { weight: 1, arbitrary: lost });
  if (measure.kind === 'grade') return fc.oneof({ weight: 6, arbitrary: grade }, { weight: 1, arbitrary: lost });
  const { unit, displayUnit } = measure;
  if (unit === null || displayUnit === null || test.unit === null) throw new Error(`${test.measure} has no unit`);
  const limits = typeof test.threshold === 'number' ? [test.threshold] : Object.values(test.threshold).map(Number);
  const inTestUnit = fc
    .tuple(fc.constantFrom(...limits), fc.constantFrom(0, 0.02, 0.3, 1), fc.double({ min: -1, max: 1, noNaN: true }))
    .map(([limit, width, offset]) => limit + offset * width * Math.max(1, Math.abs(limit)));
  const from = test.unit;
  const number = inTestUnit.map((x): FactValue => {
    const value = isPain(test.measure) ? Math.min(10, Math.max(0, Math.round(x))) : convert(x, from, unit);
    return { kind: 'number', reading: measured('x', measure.label, value, unit, 'none') };
  });
  return fc.oneof({ weight: 6, arbitrary: number }, { weight: 1, arbitrary: lost });
}

function factAt(
  measure: string,
  value: FactValue,
  movement: string | null,
  phase: string | null,
  side: Fact['side'],
): Fact {
  return {
    key: [measure, movement ?? 'case', phase ?? '', side].join('/'),
    measure,
    label: measureById(measure)?.label ?? measure,
    movement,
    phase,
    side,
    value,
    displayUnit: measureById(measure)?.displayUnit ?? null,
    height: null,
    takenOn: '2026-11-18',
    from: { kind: movement === null ? 'screeningSession' : 'movementTrial', id: movement ?? 'session' },
    provenance: 'random',
    takenAs: null,
  };
}

/** Facts that a few rules ask for, each at its place. */
const asked = fc
  .subarray([...SHIPPED_RULES], { minLength: 1, maxLength: 10 })
  .chain((chosen) =>
    fc.tuple(
      ...chosen.flatMap((rule) =>
        rule.all.map((test) =>
          fc
            .tuple(valueFor(test), fc.constantFrom('left', 'none' as const))
            .map(([value, side]) =>
              factAt(
                test.measure,
                value,
                rule.movement === 'any' ? null : rule.movement,
                rule.movement === 'any' || isPain(test.measure) ? null : rule.phase,
                rule.all.length > 1 ? 'none' : side,
              ),
            ),
        ),
      ),
    ),
  );
const nrs = (value: number): FactValue => ({
  kind: 'number',
  reading: measured('NRS', 'pain', value, '{score}', 'none'),
});
/** Pain of each trial and of each group of tests: mostly 0, sometimes some, sometimes not asked. */
const pains = fc
  .tuple(
    ...[
      ...MOVEMENTS.map(({ id }) => [id, 'pain.nrs'] as const),
      ...REGION_GROUPS.map((group) => [null, `pain.${group}`] as const),
    ].map(([movement, measure]) =>
      fc
        .oneof(
          { weight: 7, arbitrary: fc.constant<number | null>(0) },
          { weight: 1, arbitrary: fc.integer({ min: 1, max: 10 }) },
          { weight: 2, arbitrary: fc.constant(null) },
        )
        .map((value) => (value === null ? [] : [factAt(measure, nrs(value), movement, null, 'none')])),
    ),
  )
  .map((lists) => lists.flat());
const facts: fc.Arbitrary<Fact[]> = fc
  .tuple(asked, pains)
  .map(([some, more]) => [...new Map([...some, ...more].map((one) => [one.key, one])).values()]);
const history: fc.Arbitrary<Injury[]> = fc
  .array(
    fc
      .record({
        condition: fc.constantFrom(...CONDITIONS),
        status: fc.constantFrom('current', 'recovering', 'resolved' as const),
        clearedBy: fc.constantFrom('', 'Dr Example'),
        clearedOn: fc.constantFrom(null, '2026-01-01'),
        restrictions: fc.constantFrom('', 'No contact.'),
        onset: fc.constantFrom('2025-03', '2026-11-16', '2026-11', '2026', null),
      })
      .map(({ condition, ...more }) => injury(condition, more)),
    { maxLength: 3 },
  )
  .map((list) => list.map((one, i) => ({ ...one, id: `injury-${i}` })));
const options: fc.Arbitrary<JudgingOptions> = fc.record({
  referenceSex: fc.constantFrom('female', 'male', 'no-reference', null),
  birthDate: fc.constantFrom('1998-05-01', '2013-05-01', null),
  asOf: fc.constantFrom('2026-11-18', null),
});

test('the random cases reach every outcome, so that what follows says something', () => {
  const seen = fc
    .sample(fc.tuple(facts, history, options), { numRuns: 800, seed: 1 })
    .flatMap(([known, injuries, who]) => evaluateRules(SHIPPED_RULES, known, injuries, who))
    .map((one) => one.outcome);
  for (const outcome of OUTCOMES) expect(seen.filter((one) => one === outcome).length, outcome).toBeGreaterThan(3);
});

test(`${RUNS} random cases: nothing is printed that an injury on file stops or replaces`, () => {
  fc.assert(
    fc.property(facts, history, options, (known, injuries, who) => {
      const inForce = new Set(injuries.filter((one) => liftedBy(one, who.asOf) === null).map((one) => one.condition));
      for (const finding of evaluateRules(SHIPPED_RULES, known, injuries, who)) {
        if (finding.kind === 'referral' || finding.kind === 'caution') continue;
        const rule = rules.get(finding.ruleId);
        const stated = (rule?.effects ?? []).filter((one) => inForce.has(one.condition));
        const printed = READERS.flatMap((reader) => {
          const { intervention, adjustments } = finding.wording[reader];
          return [intervention ?? '', ...adjustments];
        }).join('\n');
        const isLimited = stated.some((one) => one.effect === 'stop' || one.effect === 'replace');
        if (stated.some((one) => one.effect === 'stop')) expect(finding.intervention).toBeNull();
        if (isLimited && finding.kind !== 'confirmation' && rule !== undefined) {
          for (const reader of READERS) {
            expect(printed).not.toContain(rule.wording[reader].intervention.split('{')[0]);
          }
          expect(finding.drill).toBeNull();
        }
        if (isLimited) expect(finding.outcome).not.toBe('confirmed');
        for (const effect of stated) {
          const isUnsafe = effect.unsafeFor.some((one) => inForce.has(one));
          for (const change of isUnsafe && effect.change !== '' ? [effect.change, effect.plain ?? effect.change] : []) {
            expect(printed).not.toContain(change);
          }
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
