import { DomainError } from '../../errors.ts';
import type { Quantity } from '../../quantity.ts';
import type { Point, PointU } from '../plane/point.ts';
import { derive } from '../quantity/derive.ts';
import { coordinates } from './coordinates.ts';

/** Which way the person faces in the picture: 1 to +x, −1 to −x. */
export type Facing = 1 | -1;

/** Lean of low→high from vertical as a bare number, rad, forward positive. */
export function leanOf(low: Point, high: Point, facing: Facing): number {
  return Math.atan2(facing * (high.x - low.x), high.y - low.y);
}

/**
 * Lean of a segment (the trunk: hips to shoulders) from vertical. Zero: upright; forward positive, backward negative.
 *
 * @param low, high lower and upper end, m
 * @param facing which way is forward
 * @param pointU standard uncertainty of one coordinate, m, or why there is none
 * @returns rad, −π to π
 * @throws DomainError 'input-out-of-range' if the ends coincide or a coordinate is not finite
 * @source plane geometry
 */
export function lean(low: Point, high: Point, facing: Facing, pointU: PointU, name = 'Lean'): Quantity<'rad'> {
  if (low.x === high.x && low.y === high.y) {
    throw new DomainError('input-out-of-range', `lean needs two different ends for ${name}`);
  }
  return derive(
    {
      symbol: 'λ',
      name,
      unit: 'rad',
      formula: facing === 1 ? 'λ = atan2(x_B - x_A, y_B - y_A)' : 'λ = atan2(x_A - x_B, y_B - y_A)',
      variant: 'from vertical, forward positive',
      source: { cite: 'Plane geometry', status: 'derived' },
    },
    { ...coordinates('A', low, pointU), ...coordinates('B', high, pointU) },
    (p) => leanOf({ x: p.x_A, y: p.y_A }, { x: p.x_B, y: p.y_B }, facing),
  );
}
