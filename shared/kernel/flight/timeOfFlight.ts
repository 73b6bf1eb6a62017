import type { Quantity, Reading } from '../../quantity.ts';
import { forwardFlight } from './forwardFlight.ts';
import type { AirQuantities, Release } from './release.ts';

/**
 * Time from release until the ball falls through a height (the ring's, the floor's).
 *
 * @returns s; Unknown if the ball never gets that high
 * @throws DomainError 'input-out-of-range'
 * @source see forwardFlight
 */
export function timeOfFlight(release: Release, height: Quantity<'m'>, air: AirQuantities): Reading<'s'> {
  const arrival = forwardFlight(release, air).fallingTo(height);
  return 'unknown' in arrival ? arrival : arrival.time;
}
