import { DomainError } from '../../errors.ts';
import { deviationOf, meanOf } from './readings.ts';

export interface MonteCarloOptions {
  /** Probability of the coverage intervals. */
  readonly coverage?: number;
  /** Significant digits of u that the results must be stable to; two can take a million draws. */
  readonly digits?: 1 | 2;
  /** Stop here even if not stable. */
  readonly mostDraws?: number;
  /** Do not stop before: for comparisons that need a fixed number. */
  readonly leastDraws?: number;
}

export interface MonteCarloResult {
  readonly mean: number;
  /** Standard uncertainty. */
  readonly sd: number;
  /** As much probability below as above. */
  readonly symmetric: readonly [low: number, high: number];
  readonly shortest: readonly [low: number, high: number];
  readonly draws: number;
  /** Whether mean, sd and both ends are settled to the digits asked for. */
  readonly isStable: boolean;
}

type Moments = readonly [mean: number, sd: number, low: number, high: number];

/**
 * Distributions of several results of one model by the same random draws, adaptively: batches until mean, standard
 * deviation and the ends of the coverage interval of each are settled to the digits asked for.
 *
 * @param count how many results the model has, at least 1
 * @param draw one draw: writes the results for inputs drawn at random, in its own order
 * @returns one distribution a result, in the unit of that result
 * @throws DomainError 'input-out-of-range' for a coverage outside 0 to 1 or a draw that is not finite
 * @source JCGM 101:2008, 7.5 to 7.9; several results from one sequence of draws as in JCGM 102:2011, 7 (from memory)
 */
export function monteCarloTogether(
  count: number,
  draw: (into: Float64Array) => void,
  options: MonteCarloOptions = {},
): readonly MonteCarloResult[] {
  const { coverage = 0.95, digits = 1, mostDraws = 1_000_000, leastDraws = 0 } = options;
  if (!(coverage > 0 && coverage < 1)) {
    throw new DomainError('input-out-of-range', `monteCarlo needs a coverage between 0 and 1, got ${coverage}`);
  }
  // 7.9.4 b: enough draws in a batch to place the ends of the interval.
  const size = Math.max(Math.ceil(100 / (1 - coverage)), 10_000);
  const row = new Float64Array(count);
  const results = Array.from({ length: count }, () => ({ batches: [] as Float64Array[], history: [] as Moments[] }));
  let [draws, isStable] = [0, false];
  do {
    const batch = results.map(() => new Float64Array(size));
    for (let k = 0; k < size; k++) {
      draw(row);
      for (let r = 0; r < count; r++) {
        const value = row[r] as number;
        if (!Number.isFinite(value)) {
          throw new DomainError(
            'input-out-of-range',
            `monteCarlo needs a model with a finite value for every draw, got ${value}`,
          );
        }
        (batch[r] as Float64Array)[k] = value;
      }
    }
    draws += size;
    results.forEach(({ batches, history }, r) => {
      const values = (batch[r] as Float64Array).toSorted();
      const { mean, sd } = moments(values);
      batches.push(values);
      history.push([mean, sd, ...symmetricInterval(values, coverage)]);
    });
    isStable = results.every(({ history }) => isSettled(history, digits));
  } while ((!isStable || draws < leastDraws) && draws + size <= mostDraws);

  return results.map(({ batches }) => {
    const all = new Float64Array(draws);
    batches.forEach((batch, k) => {
      all.set(batch, k * size);
    });
    all.sort();
    return {
      ...moments(all),
      symmetric: symmetricInterval(all, coverage),
      shortest: shortestInterval(all, coverage),
      draws,
      isStable,
    };
  });
}

function isSettled(history: readonly Moments[], digits: number): boolean {
  const u = meanOf(history.map((row) => row[1]));
  return history.length > 1 && spreadOfAverages(history) * 2 <= tolerance(u, digits);
}

function moments(values: Float64Array): { mean: number; sd: number } {
  let sum = 0;
  for (const value of values) sum += value;
  const mean = sum / values.length;
  let squares = 0;
  for (const value of values) squares += (value - mean) ** 2;
  return { mean, sd: Math.sqrt(squares / (values.length - 1)) };
}

/** Number of values in an interval of this coverage (7.7.2). */
function inside(sorted: Float64Array, coverage: number): number {
  return Math.floor(coverage * sorted.length + 0.5);
}

function symmetricInterval(sorted: Float64Array, coverage: number): readonly [number, number] {
  const q = inside(sorted, coverage);
  const start = Math.floor((sorted.length - q + 1) / 2) - 1;
  const low = Math.max(0, start);
  return [sorted[low] as number, sorted[Math.min(sorted.length - 1, low + q)] as number];
}

function shortestInterval(sorted: Float64Array, coverage: number): readonly [number, number] {
  const q = Math.min(inside(sorted, coverage), sorted.length - 1);
  let best = 0;
  const width = (start: number) => (sorted[start + q] as number) - (sorted[start] as number);
  for (let start = 1; start + q < sorted.length; start++) if (width(start) < width(best)) best = start;
  return [sorted[best] as number, sorted[best + q] as number];
}

/** Largest standard deviation of the averages over the batches (7.9.4 g). */
function spreadOfAverages(history: readonly (readonly number[])[]): number {
  const ofColumn = (column: number) => deviationOf(history.map((row) => row[column] as number));
  return Math.max(...[0, 1, 2, 3].map(ofColumn)) / Math.sqrt(history.length);
}

/** Half a unit in the last digit wanted of u (7.9.2). */
function tolerance(u: number, digits: number): number {
  if (u === 0) return 0;
  const exponent = Number(u.toExponential(digits - 1).split('e')[1]) - (digits - 1);
  return 0.5 * 10 ** exponent;
}
