import { expect, test } from 'vitest';
import { chancePast } from '../../../../shared/rules/checks/chancePast.ts';

// Standard normal distribution, Abramowitz & Stegun 1964, table 26.1 (to nine places).
test.each([
  [0, 0.5],
  [0.5, 0.691462461],
  [1, 0.841344746],
  [1.96, 0.975002105],
  [2.5, 0.993790335],
])(
  'Abramowitz & Stegun 1964, table 26.1: a value %d standard deviations past a limit is past it with chance %d',
  (z, p) => {
    // The approximation used promises an absolute error below 7.5e-8.
    expect(Math.abs(chancePast(10 + 2 * z, 2, '>', [10]) - p)).toBeLessThan(7.5e-8);
    expect(Math.abs(chancePast(10 - 2 * z, 2, '<', [10]) - p)).toBeLessThan(7.5e-8);
  },
);

test('law: inside and outside a range share the whole chance', () => {
  const inside = chancePast(51, 1.5, 'between', [48, 56]);
  expect(inside + chancePast(51, 1.5, 'outside', [48, 56])).toBeCloseTo(1, 12);
});

test('law: without uncertainty the chance is 0 or 1', () => {
  expect(chancePast(11, 0, '>', [10])).toBe(1);
  expect(chancePast(9, 0, '>', [10])).toBe(0);
});

test('refuses what is not a number, and a negative spread', () => {
  expect(() => chancePast(Number.NaN, 1, '>', [10])).toThrow(/finite/);
  expect(() => chancePast(1, -1, '>', [10])).toThrow(/sigma/);
});
