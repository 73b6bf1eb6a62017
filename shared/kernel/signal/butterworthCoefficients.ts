import { DomainError } from '../../errors.ts';

/** y[i] = a0 x[i] + a1 x[i−1] + a2 x[i−2] + b1 y[i−1] + b2 y[i−2]; general libraries write −b1 and −b2. */
export interface SecondOrderFilter {
  readonly a0: number;
  readonly a1: number;
  readonly a2: number;
  readonly b1: number;
  readonly b2: number;
}

/**
 * Coefficients of a second-order low-pass Butterworth filter that, run `passes` times, has lost 3 dB at `cutoffHz`.
 *
 * Each pass loses again, so the single filter is made wider: Ω = tan(π fc/fs)/C with C = (2^(1/n) − 1)^(1/4); two
 * passes: 0.802243. The division stands after the tangent; before it the gain at fc would be 0.72 to 0.78.
 *
 * @param cutoffHz 0 < fc < fs/2
 * @param rateHz fs
 * @param passes 1, or 2 for zero lag (forwards and backwards)
 * @throws DomainError 'input-out-of-range'
 * @source Winter 2009, Biomechanics and Motor Control of Human Movement, 2.2.4.4; Robertson & Dowling 2003, J
 *   Electromyogr Kinesiol 13:569-573
 */
export function butterworthCoefficients(cutoffHz: number, rateHz: number, passes: 1 | 2): SecondOrderFilter {
  if (!(Number.isFinite(rateHz) && rateHz > 0 && cutoffHz > 0 && cutoffHz < rateHz / 2)) {
    throw new DomainError(
      'input-out-of-range',
      `butterworthCoefficients needs a cut-off above 0 and below half the sampling rate, got ${cutoffHz} Hz at ${rateHz} Hz`,
    );
  }
  const correction = (2 ** (1 / passes) - 1) ** 0.25;
  const omega = Math.tan((Math.PI * cutoffHz) / rateHz) / correction;
  const k1 = Math.SQRT2 * omega;
  const k2 = omega * omega;
  const a0 = k2 / (1 + k1 + k2);
  const k3 = (2 * a0) / k2;
  return { a0, a1: 2 * a0, a2: a0, b1: -2 * a0 + k3, b2: 1 - 2 * a0 - k3 };
}
