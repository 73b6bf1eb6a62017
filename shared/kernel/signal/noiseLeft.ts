import { derivative } from './derivative.ts';
import { zeroLagButterworth } from './zeroLagButterworth.ts';

/**
 * What is left of noise after zeroLagButterworth and derivative: standard deviation out per standard deviation in, for
 * noise that is independent from sample to sample, well inside a record. Both are linear, so it is the root of the sum
 * of squares of their answer to a single spike.
 *
 * Unfiltered it is 1, 1/(√2 Δt) and √6/Δt² for the value and its two derivatives.
 *
 * @param rateHz samples a second, > 0
 * @param cutoffHz 0 < fc < fs/2; null: not filtered
 * @param order 0 the value itself, 1 or 2 its derivative
 * @returns per second to the power of order
 * @throws DomainError 'input-out-of-range'
 * @source variance of a linear combination, JCGM 100:2008, 5.1.2
 */
export function noiseLeft(rateHz: number, cutoffHz: number | null, order: 0 | 1 | 2): number {
  // Ten cut-off periods on either side: the answer has died away long before.
  const reach = cutoffHz === null ? 4 : Math.ceil((10 * rateHz) / cutoffHz);
  const spike = Array.from({ length: 2 * reach + 1 }, (_, i) => (i === reach ? 1 : 0));
  const smooth = cutoffHz === null ? spike : zeroLagButterworth(spike, rateHz, cutoffHz);
  const answer = order === 0 ? smooth : derivative(smooth, rateHz, order);
  return Math.hypot(...answer.map((value) => value ?? 0));
}
