import { refuseUnusable } from '../signal/refuseUnusable.ts';

export interface TurningPoint {
  /** Where, in samples from the first; between samples by the parabola through the three around it. */
  readonly index: number;
  readonly value: number;
  /** True if the extreme is the first or last sample: then nothing has turned there. */
  readonly isAtEdge: boolean;
}

/**
 * The highest or lowest place of a curve, finer than its samples: the vertex of the parabola through the extreme
 * sample and its neighbours. Exact for free flight.
 *
 * @param samples evenly spaced, finite, at least 3
 * @throws DomainError 'not-enough-data', 'input-out-of-range'
 * @source parabola through three points
 */
export function turningPoint(samples: readonly number[], kind: 'highest' | 'lowest'): TurningPoint {
  refuseUnusable('turningPoint', samples, 3);
  const sign = kind === 'highest' ? 1 : -1;
  const at = samples.reduce((best, value, i) => (sign * value > sign * (samples[best] as number) ? i : best), 0);
  const [before, here, after] = [samples[at - 1], samples[at] as number, samples[at + 1]];
  if (before === undefined || after === undefined) return { index: at, value: here, isAtEdge: true };
  const bend = before - 2 * here + after;
  const shift = bend === 0 ? 0 : (before - after) / (2 * bend);
  return { index: at + shift, value: here - ((before - after) * shift) / 4, isAtEdge: false };
}
