import type { Quantity } from '../../quantity.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { derive } from '../quantity/derive.ts';
import { requirePositive } from '../quantity/requirePositive.ts';

/**
 * Height the centre of mass rises above its level at take-off: h = v_to² / (2 g).
 *
 * @param takeoffVelocity m/s, at last contact (not the highest velocity, which comes a little earlier)
 * @returns m; reference: take-off
 * @throws DomainError 'input-out-of-range' if the velocity is not above zero
 * @source constant acceleration; methods compared by Linthorne 2001, Am J Phys 69(11):1198-1204
 */
export function heightFromTakeoffVelocity(takeoffVelocity: Quantity<'m/s'>): Quantity<'m'> {
  requirePositive('heightFromTakeoffVelocity', takeoffVelocity);
  return derive(
    {
      symbol: 'h',
      name: 'jump height from take-off velocity',
      unit: 'm',
      formula: 'h = v_to^2 / (2 g)',
      source: {
        cite: 'Constant-acceleration kinematics of free flight; methods compared by Linthorne 2001, American Journal of Physics 69(11):1198-1204',
        status: 'published',
      },
    },
    { v_to: takeoffVelocity, g: standardGravity },
    ({ v_to, g }) => v_to ** 2 / (2 * g),
  );
}
