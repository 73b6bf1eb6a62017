import type { Quantity } from '../../quantity.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { derive } from '../quantity/derive.ts';
import { requirePositive } from '../quantity/requirePositive.ts';

/**
 * Height the centre of mass rises above its level at take-off, from the time in the air: h = g t_f² / 8.
 * Holds for free flight without drag that lands at the level of take-off. Landing lower by s (bent legs, flat feet)
 * lengthens the flight and makes this too big by about s/2.
 *
 * @param flightTime s, > 0
 * @returns m; reference: take-off, method: flight time
 * @throws DomainError 'input-out-of-range' if the time is not above zero
 * @source constant acceleration; methods compared by Linthorne 2001, Am J Phys 69(11):1198-1204
 */
export function flightHeight(flightTime: Quantity<'s'>): Quantity<'m'> {
  requirePositive('flightHeight', flightTime);
  return derive(
    {
      symbol: 'h',
      name: 'jump height from flight time',
      unit: 'm',
      formula: 'h = g t_f^2 / 8',
      variant: 'lands at the level of take-off',
      source: {
        cite: 'Constant-acceleration kinematics of free flight; methods compared by Linthorne 2001, American Journal of Physics 69(11):1198-1204',
        status: 'published',
      },
    },
    { t_f: flightTime, g: standardGravity },
    ({ t_f, g }) => (g * t_f ** 2) / 8,
  );
}
