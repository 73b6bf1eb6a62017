import type { Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { refuseNoDistance } from './refuseNoDistance.ts';
import { VACUUM_SOURCE } from './release.ts';

/**
 * The release angle that reaches a point with the least speed: θ = 45° + ½ atan(Δh/d), in a vacuum.
 *
 * @param distance d, m, > 0
 * @param rise Δh, target height minus release height, m; negative: a drop, and an angle under 45°
 * @returns rad, 0 to π/2
 * @throws DomainError 'input-out-of-range'
 * @source constant acceleration; Brancazio 1981
 */
export function leastSpeedAngle(distance: Quantity<'m'>, rise: Quantity<'m'>): Quantity<'rad'> {
  refuseNoDistance('leastSpeedAngle', distance);
  return derive(
    {
      symbol: 'θ_min',
      name: 'Least-speed angle',
      unit: 'rad',
      formula: 'θ_min = π / 4 + atan(Δh / d) / 2',
      variant: 'in a vacuum',
      source: VACUUM_SOURCE,
    },
    { Δh: rise, d: distance },
    ({ Δh, d }) => Math.PI / 4 + Math.atan(Δh / d) / 2,
  );
}
