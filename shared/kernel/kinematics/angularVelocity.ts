import { unwrap } from '../angle/unwrap.ts';
import { derivative } from '../signal/derivative.ts';

/**
 * Angular velocity or acceleration of evenly sampled angles, unwrapped first so that crossing ±180° is no jump.
 * Smooth before: noise of standard deviation σ becomes σ/(√2 Δt), and √6 σ/Δt² for the acceleration.
 *
 * @param angles rad, finite, at least 3
 * @param rateHz samples a second
 * @returns rad/s or rad/s²; null at both ends
 * @throws DomainError 'not-enough-data', 'input-out-of-range'
 * @source central differences
 */
export function angularVelocity(angles: readonly number[], rateHz: number, order: 1 | 2 = 1): (number | null)[] {
  return derivative(unwrap(angles) as number[], rateHz, order);
}
