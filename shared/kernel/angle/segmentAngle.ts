import { DomainError } from '../../errors.ts';
import type { Quantity } from '../../quantity.ts';
import type { Point, PointU } from '../plane/point.ts';
import { derive } from '../quantity/derive.ts';
import { coordinates } from './coordinates.ts';

/** Direction of from→to as a bare number, rad, −π to π from the right horizontal, anticlockwise positive. */
export function segmentAngleOf(from: Point, to: Point): number {
  return Math.atan2(to.y - from.y, to.x - from.x);
}

/**
 * Direction of a segment. Zero: pointing right; anticlockwise positive; proximal end as origin.
 *
 * @param from proximal end, m
 * @param to distal end, m
 * @param pointU standard uncertainty of one coordinate, m, or why there is none
 * @returns rad, −π to π
 * @throws DomainError 'input-out-of-range' if the ends coincide or a coordinate is not finite
 * @source plane geometry
 */
export function segmentAngle(from: Point, to: Point, pointU: PointU, name = 'Segment angle'): Quantity<'rad'> {
  if (from.x === to.x && from.y === to.y) {
    throw new DomainError('input-out-of-range', `segmentAngle needs two different ends for ${name}`);
  }
  const mid = segmentAngleOf(from, to);
  return derive(
    {
      symbol: 'θ',
      name,
      unit: 'rad',
      formula: 'θ = atan2(y_B - y_A, x_B - x_A)',
      variant: 'from the right horizontal, anticlockwise positive',
      source: { cite: 'Plane geometry', status: 'derived' },
    },
    { ...coordinates('A', from, pointU), ...coordinates('B', to, pointU) },
    // Kept within half a turn of the value, so that a segment pointing left does not jump by 2π while u is taken.
    (p) => {
      const raw = segmentAngleOf({ x: p.x_A, y: p.y_A }, { x: p.x_B, y: p.y_B });
      return raw - 2 * Math.PI * Math.round((raw - mid) / (2 * Math.PI));
    },
  );
}
