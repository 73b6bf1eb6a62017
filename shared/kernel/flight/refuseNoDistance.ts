import { DomainError } from '../../errors.ts';
import type { Quantity } from '../../quantity.ts';

/**
 * @throws DomainError 'input-out-of-range' unless the distance is above 0
 * @source a target at no distance has no release
 */
export function refuseNoDistance(name: string, distance: Quantity<'m'>): void {
  if (!(distance.value > 0)) {
    throw new DomainError('input-out-of-range', `${name} needs a distance above 0 m, got ${distance.value} m`);
  }
}
