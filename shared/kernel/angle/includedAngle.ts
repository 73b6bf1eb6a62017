import { DomainError } from '../../errors.ts';
import type { Quantity } from '../../quantity.ts';
import type { Point, PointU } from '../plane/point.ts';
import { derive } from '../quantity/derive.ts';
import { coordinates } from './coordinates.ts';

/** The inside angle at b between b→a and b→c as a bare number, rad, 0 to π. NaN where two points coincide. */
export function includedAngleOf(a: Point, b: Point, c: Point): number {
  const u = { x: a.x - b.x, y: a.y - b.y };
  const v = { x: c.x - b.x, y: c.y - b.y };
  if ((u.x === 0 && u.y === 0) || (v.x === 0 && v.y === 0)) return Number.NaN;
  return Math.atan2(Math.abs(u.x * v.y - u.y * v.x), u.x * v.x + u.y * v.y);
}

/**
 * The inside angle at a joint: at b, between the segments to a and to c. Zero: folded shut; π: straight. No sign: it
 * cannot tell bending from overextension.
 * atan2(|u × v|, u · v), which keeps its precision near 0 and π where an arc cosine loses it.
 *
 * @param a, b, c points, m
 * @param pointU standard uncertainty of one coordinate, m, or why there is none
 * @returns rad, 0 to π
 * @throws DomainError 'input-out-of-range' if two points coincide or a coordinate is not finite
 * @source plane geometry
 */
export function includedAngle(a: Point, b: Point, c: Point, pointU: PointU, name = 'Included angle'): Quantity<'rad'> {
  const value = includedAngleOf(a, b, c);
  if (Number.isNaN(value)) {
    throw new DomainError('input-out-of-range', `includedAngle needs three different points for ${name}`);
  }
  const sense = (a.x - b.x) * (c.y - b.y) - (a.y - b.y) * (c.x - b.x) < 0 ? -1 : 1;
  return derive(
    {
      symbol: 'α',
      name,
      unit: 'rad',
      formula: 'α = atan2(abs(u × v), u · v), u = A - B, v = C - B',
      variant: 'inside angle at B, 180° when straight',
      source: { cite: 'Plane geometry', status: 'derived' },
    },
    { ...coordinates('A', a, pointU), ...coordinates('B', b, pointU), ...coordinates('C', c, pointU) },
    // Signed and continuous through straight, or the fold at 180° would hide the uncertainty of a straight joint.
    (p) => {
      const [ux, uy, vx, vy] = [p.x_A - p.x_B, p.y_A - p.y_B, p.x_C - p.x_B, p.y_C - p.y_B];
      const raw = Math.atan2(sense * (ux * vy - uy * vx), ux * vx + uy * vy);
      return raw - 2 * Math.PI * Math.round((raw - value) / (2 * Math.PI));
    },
  );
}
