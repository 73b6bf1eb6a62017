import type { Quantity } from '../../quantity.ts';
import type { Point, PointU } from '../plane/point.ts';
import { derive } from '../quantity/derive.ts';
import { includedAngle } from './includedAngle.ts';

/**
 * How far a hinge joint (knee, elbow) is bent: π minus the inside angle at b. Zero: straight. Always 0 or more, so
 * that overextension reads as a small flexion.
 *
 * @param a, b, c the proximal point, the joint, the distal point, m
 * @param pointU standard uncertainty of one coordinate, m, or why there is none
 * @returns rad, 0 to π
 * @throws as includedAngle
 * @source plane geometry
 */
export function flexion(a: Point, b: Point, c: Point, pointU: PointU, name = 'Flexion'): Quantity<'rad'> {
  return derive(
    {
      symbol: 'φ',
      name,
      unit: 'rad',
      formula: 'φ = π - α',
      variant: 'flexion: 0° when straight',
      source: { cite: 'Plane geometry', status: 'derived' },
    },
    { α: includedAngle(a, b, c, pointU) },
    ({ α }) => Math.PI - α,
  );
}
