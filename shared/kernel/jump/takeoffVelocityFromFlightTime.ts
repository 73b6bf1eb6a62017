import type { Quantity } from '../../quantity.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { derive } from '../quantity/derive.ts';
import { requirePositive } from '../quantity/requirePositive.ts';

/**
 * Vertical take-off velocity from the time in the air: v_to = g t_f / 2, landing at the level of take-off.
 *
 * @param flightTime s, > 0
 * @returns m/s
 * @throws DomainError 'input-out-of-range' if the time is not above zero
 * @source constant acceleration; methods compared by Linthorne 2001, Am J Phys 69(11):1198-1204
 */
export function takeoffVelocityFromFlightTime(flightTime: Quantity<'s'>): Quantity<'m/s'> {
  requirePositive('takeoffVelocityFromFlightTime', flightTime);
  return derive(
    {
      symbol: 'v_to',
      name: 'take-off velocity from flight time',
      unit: 'm/s',
      formula: 'v_to = g t_f / 2',
      variant: 'lands at the level of take-off',
      source: {
        cite: 'Constant-acceleration kinematics of free flight; methods compared by Linthorne 2001, American Journal of Physics 69(11):1198-1204',
        status: 'published',
      },
    },
    { t_f: flightTime, g: standardGravity },
    ({ t_f, g }) => (g * t_f) / 2,
  );
}
