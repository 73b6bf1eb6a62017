import type { Quantity } from '../../quantity.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { derive } from '../quantity/derive.ts';
import { refuseNoDistance } from './refuseNoDistance.ts';
import { VACUUM_SOURCE } from './release.ts';

/**
 * The least release speed that reaches a point at any angle: v² = g(Δh + √(Δh² + d²)), in a vacuum. With drag more is
 * needed, so a speed below this one cannot have reached.
 *
 * @param distance d, m, > 0
 * @param rise Δh, target height minus release height, m
 * @returns m/s, > 0
 * @throws DomainError 'input-out-of-range'
 * @source constant acceleration; Brancazio 1981
 */
export function leastSpeed(distance: Quantity<'m'>, rise: Quantity<'m'>): Quantity<'m/s'> {
  refuseNoDistance('leastSpeed', distance);
  return derive(
    {
      symbol: 'v_min',
      name: 'Least release speed',
      unit: 'm/s',
      formula: 'v_min = sqrt(g (Δh + sqrt(Δh^2 + d^2)))',
      variant: 'in a vacuum',
      source: VACUUM_SOURCE,
    },
    { g: standardGravity, Δh: rise, d: distance },
    ({ g, Δh, d }) => Math.sqrt(g * (Δh + Math.hypot(Δh, d))),
  );
}
