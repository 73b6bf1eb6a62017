import { DomainError } from '../../errors.ts';
import { refuseUnusable } from './refuseUnusable.ts';

export interface Resampled {
  readonly startS: number;
  readonly rateHz: number;
  readonly values: readonly number[];
  /** Longest step between samples over the median step, minus 1. */
  readonly unevenness: number;
  readonly warnings: readonly string[];
}

/** Frame spacing that varies by more than this is worth saying: a convention. */
const WORTH_SAYING = 0.05;

/**
 * Unevenly timed samples (a phone's variable frame rate) on an even clock, by the cubic through the four samples
 * around each new instant. Uses each sample's own time, never its number over a nominal rate.
 *
 * @param times s, strictly rising
 * @param values as many, finite
 * @param rateHz the even rate wanted, > 0
 * @param startS the even clock's first instant, not before the first sample; absent: that sample
 * @throws DomainError 'not-enough-data' for fewer than four samples, 'input-out-of-range'
 * @source Lagrange interpolation
 */
export function resample(
  times: readonly number[],
  values: readonly number[],
  rateHz: number,
  startS = times[0] as number,
): Resampled {
  refuseUnusable('resample', times, 4);
  refuseUnusable('resample', values, 4);
  if (times.length !== values.length || !(Number.isFinite(rateHz) && rateHz > 0)) {
    throw new DomainError(
      'input-out-of-range',
      `resample needs as many times as values and a rate above 0 Hz, got ${times.length}, ${values.length} and ${rateHz} Hz`,
    );
  }
  const steps = times.slice(1).map((t, i) => t - (times[i] as number));
  const backwards = steps.findIndex((step) => step <= 0);
  if (backwards >= 0) {
    throw new DomainError(
      'input-out-of-range',
      `resample needs times that rise, got ${times[backwards + 1]} s after ${times[backwards]} s`,
      `times.${backwards + 1}`,
    );
  }
  const median = steps.toSorted((a, b) => a - b)[Math.floor(steps.length / 2)] as number;
  const unevenness = Math.max(...steps) / median - 1;
  // A hair of slack, so that an end that falls on the grid is kept in spite of rounding.
  const count = Math.floor(((times.at(-1) as number) - startS) * rateHz + 1e-9) + 1;
  let right = 1;
  const even = Array.from({ length: count }, (_, i) => {
    const t = startS + i / rateHz;
    while (right < times.length - 1 && (times[right] as number) < t) right += 1;
    const first = Math.min(Math.max(0, right - 2), times.length - 4);
    return cubic(times.slice(first, first + 4), values.slice(first, first + 4), t);
  });
  return {
    startS,
    rateHz,
    values: even,
    unevenness,
    warnings:
      unevenness > WORTH_SAYING
        ? [`Frames are unevenly spaced, by up to ${(100 * unevenness).toFixed(0)} %: each frame's own time was used.`]
        : [],
  };
}

function cubic(ts: readonly number[], ys: readonly number[], t: number): number {
  return ys.reduce(
    (sum, y, i) => sum + ts.reduce((w, tj, j) => (i === j ? w : (w * (t - tj)) / ((ts[i] as number) - tj)), y),
    0,
  );
}
