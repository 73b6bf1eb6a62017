import type { Quantity } from '../../quantity.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { derive } from '../quantity/derive.ts';
import { requirePositive } from '../quantity/requirePositive.ts';

/**
 * Vertical velocity that carries the centre of mass up by a height: v_to = √(2 g h). Also the touchdown velocity of a
 * drop from that height.
 *
 * @param height m, > 0, above the level of take-off
 * @returns m/s
 * @throws DomainError 'input-out-of-range' if the height is not above zero
 * @source constant acceleration; methods compared by Linthorne 2001, Am J Phys 69(11):1198-1204
 */
export function takeoffVelocityFromHeight(height: Quantity<'m'>): Quantity<'m/s'> {
  requirePositive('takeoffVelocityFromHeight', height);
  return derive(
    {
      symbol: 'v_to',
      name: 'take-off velocity from height',
      unit: 'm/s',
      formula: 'v_to = sqrt(2 g h)',
      source: {
        cite: 'Constant-acceleration kinematics of free flight; methods compared by Linthorne 2001, American Journal of Physics 69(11):1198-1204',
        status: 'published',
      },
    },
    { h: height, g: standardGravity },
    ({ h, g }) => Math.sqrt(2 * g * h),
  );
}
