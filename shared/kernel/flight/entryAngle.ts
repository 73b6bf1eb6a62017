import type { Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { refuseNoDistance } from './refuseNoDistance.ts';
import { VACUUM_SOURCE } from './release.ts';

/**
 * Angle below the horizontal at which a ball released to hit a point gets there: tan θ_e = tan θ − 2Δh/d, in a vacuum.
 * Equal to the release angle only if Δh = 0. Negative: the ball is still rising there.
 *
 * @param distance d, m, > 0
 * @param rise Δh, target height minus release height, m
 * @param angle θ, rad, −π/2 to π/2
 * @returns rad
 * @throws DomainError 'input-out-of-range'
 * @source constant acceleration
 */
export function entryAngle(distance: Quantity<'m'>, rise: Quantity<'m'>, angle: Quantity<'rad'>): Quantity<'rad'> {
  refuseNoDistance('entryAngle', distance);
  return derive(
    {
      symbol: 'θ_e',
      name: 'Entry angle',
      unit: 'rad',
      formula: 'tan θ_e = tan θ - 2 Δh / d',
      variant: 'in a vacuum, below the horizontal',
      source: VACUUM_SOURCE,
    },
    { θ: angle, Δh: rise, d: distance },
    ({ θ, Δh, d }) => Math.atan(Math.tan(θ) - (2 * Δh) / d),
  );
}
