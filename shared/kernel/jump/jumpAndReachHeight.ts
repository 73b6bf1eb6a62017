import { DomainError } from '../../errors.ts';
import type { Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { requirePositive } from '../quantity/requirePositive.ts';

/**
 * Jump and reach: highest point touched in the jump less the standing reach. Measured from standing, so it holds heel
 * rise, straightening and shoulder reach as well as flight, and cannot be set beside a height above take-off.
 *
 * @param standingReach m, > 0, same shoes, same arm
 * @param jumpReach m, at least the standing reach
 * @returns m; reference: standing, method: jump and reach
 * @throws DomainError 'input-out-of-range' if a reach is not above zero or the jump reaches less than standing
 * @source definition of the test
 */
export function jumpAndReachHeight(standingReach: Quantity<'m'>, jumpReach: Quantity<'m'>): Quantity<'m'> {
  requirePositive('jumpAndReachHeight', standingReach, jumpReach);
  if (jumpReach.value < standingReach.value) {
    throw new DomainError(
      'input-out-of-range',
      `jumpAndReachHeight needs a jump reach of at least the standing reach of ${standingReach.value} m, got ${jumpReach.value} m`,
    );
  }
  return derive(
    {
      symbol: 'h',
      name: 'jump and reach height',
      unit: 'm',
      formula: 'h = r_j - r_s',
      variant: 'above standing reach',
      source: { cite: 'Definition of the jump and reach test', status: 'convention' },
    },
    { r_j: jumpReach, r_s: standingReach },
    ({ r_j, r_s }) => r_j - r_s,
  );
}
