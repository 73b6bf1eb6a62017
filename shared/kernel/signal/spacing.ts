import { DomainError } from '../../errors.ts';

/** How the times of a record follow one another. */
export type Spacing =
  | { readonly kind: 'even'; readonly rateHz: number }
  /** Even, but written with so few digits that they jump between two intervals: the rate is from first and last. */
  | { readonly kind: 'rounded'; readonly rateHz: number; readonly resolutionS: number }
  /** `after`: sample at the start of the first odd interval. */
  | {
      readonly kind: 'uneven';
      readonly medianS: number;
      readonly oddS: number;
      readonly after: number;
    };

/** Sampling may vary by this share of an interval. Convention. */
const IRREGULAR = 0.05;

/**
 * Whether the times of a record are evenly spaced, and at what rate.
 *
 * @param times s, at least two, strictly rising
 * @param reader names whoever asks, in refusals; `at` names the place of a sample there
 * @throws DomainError 'not-enough-data' for fewer than two, 'input-malformed' for a time that does not rise
 * @source definition of a sampling rate
 */
export function spacing(times: readonly number[], reader: string, at: (sample: number) => string): Spacing {
  if (times.length < 2) {
    throw new DomainError('not-enough-data', `${reader} needs at least two times, got ${times.length}`);
  }
  const intervals = times.slice(1).map((time, k) => time - (times[k] as number));
  const fallen = intervals.findIndex((interval) => !(interval > 0));
  if (fallen >= 0) {
    throw new DomainError(
      'input-malformed',
      `${reader} needs times that rise, got ${times[fallen + 1]} after ${times[fallen]}`,
      at(fallen + 1),
    );
  }
  const sorted = intervals.toSorted((a, b) => a - b);
  const median = sorted[sorted.length >> 1] as number;
  const isOff = (interval: number) => Math.abs(interval - median) > IRREGULAR * median;
  const off = intervals.filter(isOff).length;
  const mean = ((times.at(-1) as number) - (times[0] as number)) / intervals.length;
  if (off === 0) return { kind: 'even', rateHz: 1 / mean };
  // Times printed with few digits jump between two values all along; a gap or a stumble is a rare thing.
  const resolutionS = (sorted.at(-1) as number) - (sorted[0] as number);
  if (off > IRREGULAR * intervals.length && resolutionS < mean && isEvenOnceRounded(times, mean, resolutionS)) {
    return { kind: 'rounded', rateHz: 1 / mean, resolutionS };
  }
  const after = intervals.findIndex(isOff);
  return { kind: 'uneven', medianS: median, oddS: intervals[after] as number, after };
}

/** Digits are decimal: the resolution is a power of ten, every time a multiple of it, and near an even clock. */
function isEvenOnceRounded(times: readonly number[], interval: number, resolution: number): boolean {
  const digits = Math.log10(resolution);
  if (Math.abs(digits - Math.round(digits)) > 0.01) return false;
  return times.every((time, k) => {
    const since = time - (times[0] as number);
    const steps = since / resolution;
    return Math.abs(steps - Math.round(steps)) < 0.02 && Math.abs(since - k * interval) <= resolution;
  });
}
