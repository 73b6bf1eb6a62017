import { expect, test } from 'vitest';
import type { Fact } from '../../../shared/assess/assessment.ts';
import { factsFromRetests } from '../../../shared/assess/factsFromRetests.ts';
import { evaluateRules } from '../../../shared/rules/evaluate.ts';
import { SHIPPED_RULES } from '../../../shared/rules/shippedRules.ts';
import { ADULT_WOMAN, fact } from '../rules/build.ts';

// Minimal detectable change of the weight-bearing lunge, 1.9 cm: Powden, Hoch & Hoch 2015, Man Ther 20:524.

const lunge = (cm: number, takenOn: string, more: Partial<Fact> = {}): Fact => ({
  ...fact('wblt.distance', cm, { side: 'left', takenOn, record: takenOn }),
  ...more,
});
const ratioOf = (facts: Fact[]) => {
  const value = factsFromRetests(facts)[0]?.value;
  return value?.kind === 'number' && 'value' in value.reading ? value.reading.value : value;
};

test('a change is held against the detectable change of its own test', () => {
  expect(ratioOf([lunge(10, '2026-09-01'), lunge(11.9, '2026-10-01')])).toBeCloseTo(1, 9);
  expect(ratioOf([lunge(10, '2026-09-01'), lunge(6.2, '2026-10-01')])).toBeCloseTo(2, 9);
});

test('only the two newest count, and one alone says nothing', () => {
  expect(factsFromRetests([lunge(10, '2026-09-01')])).toEqual([]);
  const three = [lunge(4, '2026-08-01'), lunge(10, '2026-09-01'), lunge(10, '2026-10-01')];
  expect(ratioOf(three)).toBe(0);
  expect(ratioOf(three.toReversed())).toBe(0);
});

test('another rater: cannot say', () => {
  const [change] = factsFromRetests([
    lunge(10, '2026-09-01'),
    lunge(12, '2026-10-01', { provenance: 'screening, rated by another' }),
  ]);
  expect(change?.value).toMatchObject({ kind: 'unknown' });
});

test('a change within noise is said to be one', () => {
  const facts = [lunge(10, '2026-09-01'), lunge(10.1, '2026-10-01')];
  const found = evaluateRules(
    SHIPPED_RULES.filter(({ id }) => id === 'any/change-within-noise'),
    [...factsFromRetests(facts), fact('pain.whole-body', 0)],
    [],
    ADULT_WOMAN,
  );
  expect(found.map(({ outcome }) => outcome)).toEqual(['confirmed']);
});

test('the same measure in another movement or phase is another result', () => {
  const squat = lunge(10, '2026-09-01', { movement: 'single-leg-squat', phase: 'bottom' });
  expect(factsFromRetests([squat, lunge(12, '2026-10-01', { movement: 'drop-landing', phase: 'bottom' })])).toEqual([]);
  expect(factsFromRetests([squat, lunge(12, '2026-10-01', { movement: squat.movement, phase: 'rise' })])).toEqual([]);
  const both = factsFromRetests([
    squat,
    lunge(6, '2026-09-01', { movement: squat.movement, phase: 'rise', key: 'then' }),
    lunge(12, '2026-10-01', { movement: squat.movement, phase: 'bottom', key: 'bottom' }),
    lunge(12, '2026-10-01', { movement: squat.movement, phase: 'rise', key: 'rise' }),
  ]);
  expect(new Set(both.map(({ key }) => key)).size).toBe(2);
});
