import type { Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';

/**
 * By how much a length reads too long because its object is nearer the camera than the calibrated plane.
 * Pinhole camera looking straight at the plane: d/(D − d). Negative for an object farther away. Divide a length by
 * 1 + this to correct it.
 *
 * @param camera distance of the camera from the calibrated plane, m, > 0
 * @param nearer how much nearer than the plane the object is, m; negative: farther
 * @returns ratio
 * @source similar triangles
 */
export function depthFactor(camera: Quantity<'m'>, nearer: Quantity<'m'>): Quantity<'1'> {
  return derive(
    {
      symbol: 'ε',
      name: 'Lengths too long by',
      unit: '1',
      formula: 'ε = d / (D - d)',
      source: { cite: 'Pinhole camera, similar triangles', status: 'derived' },
    },
    { D: camera, d: nearer },
    // An object at the lens or behind it has no image; the division by 0 or less is refused by derive or by this.
    ({ D, d }) => (D > d ? d / (D - d) : Number.NaN),
  );
}
