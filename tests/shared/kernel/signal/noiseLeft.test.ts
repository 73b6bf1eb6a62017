import { expect, test } from 'vitest';
import { noiseLeft } from '../../../../shared/kernel/signal/noiseLeft.ts';

test.each([
  [60, 0.0424, 8.82],
  [120, 0.0849, 35.3],
  [240, 0.1697, 141.1],
])('propagation, unfiltered: 1 mm at %d Hz leaves %d m/s and %d m/s²', (rate, v, a) => {
  expect(noiseLeft(rate, null, 0)).toBe(1);
  expect(0.001 * noiseLeft(rate, null, 1)).toBeCloseTo(v, 4);
  expect((0.001 * noiseLeft(rate, null, 2)) / a).toBeCloseTo(1, 2);
});

// Far below the sampling rate the filter is |H|² = 1 / (1 + (f/f_a)⁴)², f_a = f_c / (√2 − 1)^¼, and the integral of
// (2πf)^2k |H|² over all f is a Beta function: ∫₀^∞ x^2k (1 + x⁴)^−2 dx = 3π√2/16 for k = 0, π√2/16 for k = 1 and 2.
test.each([
  [0, 3],
  [1, 1],
  [2, 1],
] as const)('closed form: white noise through the squared Butterworth response, derivative %d', (order, share) => {
  const [rate, cutoff] = [4000, 10];
  const wide = cutoff / (Math.SQRT2 - 1) ** 0.25;
  const variance =
    (2 / rate) * (2 * Math.PI) ** (2 * order) * wide ** (2 * order + 1) * ((share * Math.PI * Math.SQRT2) / 16);
  expect(noiseLeft(rate, cutoff, order) / Math.sqrt(variance)).toBeCloseTo(1, 3);
});

test('refuses a cut-off that the sampling rate does not reach', () => {
  expect(() => noiseLeft(60, 30, 1)).toThrow(/30 Hz at 60 Hz/);
});
