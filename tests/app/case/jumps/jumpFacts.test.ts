import { expect, test } from 'vitest';
import { spreadOf } from '../../../../app/case/jumps/jumpFacts.ts';

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
