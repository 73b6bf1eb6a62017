/** A stretch of standing. Sample numbers from 0, `end` excluded. */
export interface QuietWindow {
  readonly start: number;
  readonly end: number;
  readonly meanN: number;
  /** Sample standard deviation (n − 1), N. */
  readonly sdN: number;
  /** Standard error of the mean, N. */
  readonly meanUN: number;
  /** Long and still enough to weigh by and to start an integration from. */
  readonly isStill: boolean;
}

/** Lengths tried, longest first; a second is what weighing wants (Owen et al. 2014). Shorter ones are conventions. */
const LENGTHS_S = [1, 0.5, 0.3, 0.2, 0.1];
/** Spread below which a window is taken without trying a shorter one. Convention. */
const ACCEPTED_SD_N = 8;
/** A still stance lasts at least this long with at most this spread. Convention. */
const STILL_S = 0.5;
const STILL_SD_N = 5;
/** Number of parts whose means give the standard error: sway makes neighbouring samples alike, so SD/√n is too good. */
const BLOCKS = 10;

/**
 * The quietest stretch of standing between two samples: the longest length that has a window of small spread, and of
 * that length the window with the smallest.
 *
 * @param forceN N, all finite
 * @param rateHz samples a second, > 0
 * @param from first sample that may be used
 * @param to first sample that may not
 * @param loadedN windows whose mean lies below half of this are an empty plate, not a stance
 * @returns null where the stretch is shorter than the shortest length or nobody stands in it
 * @source quietest window; Owen et al. 2014 ask for 1 s; shorter lengths: convention
 */
export function quietWindow(
  forceN: Float64Array,
  rateHz: number,
  from: number,
  to: number,
  loadedN: number,
): QuietWindow | null {
  // Sums of the deviations from the usual load: squares of whole forces would lose the small spread to rounding.
  const sums = new Float64Array(Math.max(0, to - from) + 1);
  const squares = new Float64Array(sums.length);
  for (let k = from; k < to; k++) {
    const deviation = (forceN[k] as number) - loadedN;
    sums[k - from + 1] = (sums[k - from] as number) + deviation;
    squares[k - from + 1] = (squares[k - from] as number) + deviation * deviation;
  }
  const step = Math.max(1, Math.round(rateHz / 100));
  let best: QuietWindow | null = null;
  for (const lengthS of LENGTHS_S) {
    const n = Math.round(lengthS * rateHz);
    if (n < BLOCKS || from + n > to) continue;
    for (let start = 0; start + n < sums.length; start += step) {
      const sum = (sums[start + n] as number) - (sums[start] as number);
      const meanN = loadedN + sum / n;
      if (meanN < loadedN / 2) continue;
      const square = (squares[start + n] as number) - (squares[start] as number);
      const sdN = Math.sqrt(Math.max(0, square - (sum * sum) / n) / (n - 1));
      if (best !== null && sdN >= best.sdN) continue;
      best = {
        start: from + start,
        end: from + start + n,
        meanN,
        sdN,
        meanUN: 0,
        isStill: lengthS >= STILL_S && sdN <= STILL_SD_N,
      };
    }
    if (best !== null && best.sdN < ACCEPTED_SD_N) break;
  }
  return best === null ? null : { ...best, meanUN: standardError(forceN, best) };
}

function standardError(forceN: Float64Array, window: QuietWindow): number {
  const n = window.end - window.start;
  let squares = 0;
  for (let block = 0; block < BLOCKS; block++) {
    const start = window.start + Math.floor((block * n) / BLOCKS);
    const end = window.start + Math.floor(((block + 1) * n) / BLOCKS);
    let sum = 0;
    for (let k = start; k < end; k++) sum += forceN[k] as number;
    squares += (sum / (end - start) - window.meanN) ** 2;
  }
  return Math.max(Math.sqrt(squares / (BLOCKS - 1) / BLOCKS), window.sdN / Math.sqrt(n));
}
