import { expect, test } from 'vitest';
import { coefficientOfVariation, spreadOf } from '../../../../app/case/jumps/jumpFacts.ts';

test('Wikipedia’s worked sample {2, 4, 4, 4, 5, 5, 7, 9}: mean 5, squared deviations sum to 32, so SD = √(32/7) (from memory)', () => {
  const spread = spreadOf([2, 4, 4, 4, 5, 5, 7, 9]);
  expect(spread?.mean).toBe(5);
  expect(spread?.best).toBe(9);
  expect(spread?.count).toBe(8);
  expect(spread?.sd).toBeCloseTo(Math.sqrt(32 / 7), 12);
});

test('law: one value has no spread, and none has no summary', () => {
  expect(spreadOf([0.31])).toEqual({ count: 1, best: 0.31, mean: 0.31, sd: null });
  expect(spreadOf([])).toBeNull();
});

test('law: adding a constant moves the mean and leaves the spread', () => {
  const here = spreadOf([0.31, 0.35, 0.3]);
  const there = spreadOf([10.31, 10.35, 10.3]);
  expect((there?.mean ?? 0) - (here?.mean ?? 0)).toBeCloseTo(10, 12);
  expect(there?.sd).toBeCloseTo(here?.sd ?? Number.NaN, 10);
});

test('law: the coefficient of variation is the same in any unit', () => {
  const [metres, centimetres] = [1, 100].map((scale) => spreadOf([0.31 * scale, 0.35 * scale, 0.3 * scale]));
  if (!metres || !centimetres) return expect.fail('three values have a spread');
  // By hand: mean 0.32, deviations -0.01, 0.03, -0.02, SD = √(0.0014 / 2) = 0.0264575, 8.2680 %.
  expect(coefficientOfVariation(metres)).toBeCloseTo(8.268, 3);
  expect(coefficientOfVariation(centimetres)).toBeCloseTo(coefficientOfVariation(metres), 9);
});
