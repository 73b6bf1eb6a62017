import { DomainError } from '../../errors.ts';
import { refuseUnusable } from './refuseUnusable.ts';

/**
 * First or second time derivative of evenly spaced samples by central differences:
 * (x[i+1] − x[i−1])/(2Δt) and (x[i+1] − 2x[i] + x[i−1])/Δt². Exact for a parabola. Smooth first: noise of standard
 * deviation σ becomes σ/(√2 Δt) and √6 σ/Δt².
 *
 * @param samples finite, at least 3
 * @param rateHz samples a second, > 0
 * @returns per second (squared); null at both ends, where there is no neighbour
 * @throws DomainError 'not-enough-data', 'input-out-of-range'
 * @source finite differences
 */
export function derivative(samples: readonly number[], rateHz: number, order: 1 | 2): (number | null)[] {
  refuseUnusable('derivative', samples, 3);
  if (!(Number.isFinite(rateHz) && rateHz > 0)) {
    throw new DomainError('input-out-of-range', `derivative needs a sampling rate above 0 Hz, got ${rateHz}`);
  }
  return samples.map((here, i) => {
    const before = samples[i - 1];
    const after = samples[i + 1];
    if (before === undefined || after === undefined) return null;
    return order === 1 ? ((after - before) * rateHz) / 2 : (after - 2 * here + before) * rateHz * rateHz;
  });
}
