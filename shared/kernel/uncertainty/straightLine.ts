import { DomainError } from '../../errors.ts';
import { meanOf, requireReadings } from './readings.ts';

export interface StraightLine {
  /** Value at x = reference, and its standard uncertainty. */
  readonly intercept: number;
  readonly interceptU: number;
  readonly slope: number;
  readonly slopeU: number;
  /** Correlation of intercept and slope; 0 where the reference is the mean of x. */
  readonly correlation: number;
  /** Standard deviation about the line, n − 2. */
  readonly residual: number;
  readonly degrees: number;
  /** Value and standard uncertainty of the line anywhere. */
  readonly at: (x: number) => { readonly value: number; readonly u: number };
}

/**
 * Straight line y = a + b (x − reference) by least squares, errors in y alike and independent.
 *
 * @param xs, ys readings, any units, as many of each, at least 3
 * @param reference place on the x axis that the intercept belongs to
 * @throws DomainError 'not-enough-data' with fewer than three points or all at one x, 'input-out-of-range'
 * @source JCGM 100:2008, H.3
 */
export function straightLine(xs: readonly number[], ys: readonly number[], reference: number): StraightLine {
  requireReadings('straightLine', xs, 3);
  requireReadings('straightLine', ys, xs.length);
  const n = xs.length;
  const xMean = meanOf(xs);
  const yMean = meanOf(ys);
  const square = xs.reduce((sum, x) => sum + (x - xMean) ** 2, 0);
  if (square === 0) throw new DomainError('not-enough-data', 'straightLine needs points at two places or more');
  const slope = xs.reduce((sum, x, k) => sum + (x - xMean) * ((ys[k] as number) - yMean), 0) / square;
  const squares = xs.reduce((sum, x, k) => sum + ((ys[k] as number) - yMean - slope * (x - xMean)) ** 2, 0);
  const residual = Math.sqrt(squares / (n - 2));
  const at = (x: number) => ({
    value: yMean + slope * (x - xMean),
    u: residual * Math.sqrt(1 / n + (x - xMean) ** 2 / square),
  });
  const { value: intercept, u: interceptU } = at(reference);
  const slopeU = residual / Math.sqrt(square);
  return {
    intercept,
    interceptU,
    slope,
    slopeU,
    correlation: interceptU === 0 ? 0 : (slopeU * (reference - xMean)) / interceptU,
    residual,
    degrees: n - 2,
    at,
  };
}
