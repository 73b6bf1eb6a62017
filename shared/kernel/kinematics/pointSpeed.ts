import { measured, type Quantity } from '../../quantity.ts';
import type { Point, PointU } from '../plane/point.ts';
import { derive } from '../quantity/derive.ts';
import { noiseLeft } from '../signal/noiseLeft.ts';
import { smoothing } from './angularRate.ts';

/**
 * Speed of a point in the plane of motion between the frame before and the frame after, from smoothed places. Its
 * uncertainty: what the filter and the difference leave of the error of digitising, and the scale; what the filter
 * rounds off a fast movement is not in it.
 *
 * @param before, after m, two frames apart, low-passed at `cutoffHz`
 * @param rateHz frames a second, > 0
 * @param cutoffHz of the filter they went through; null: none
 * @param pointU standard uncertainty of one coordinate before the filter, m, or why there is none
 * @param scale of the calibration: 1, with its relative uncertainty
 * @param name of the point
 * @returns m/s, ≥ 0
 * @throws DomainError 'input-out-of-range'
 * @source central differences; noiseLeft
 */
export function pointSpeed(
  before: Point,
  after: Point,
  rateHz: number,
  cutoffHz: number | null,
  pointU: PointU,
  scale: Quantity<'1'>,
  name: string,
): Quantity<'m/s'> {
  const u = typeof pointU === 'number' ? pointU * noiseLeft(rateHz, cutoffHz, 1) : pointU;
  const component = (axis: 'x' | 'y') =>
    measured(`v_${axis}`, `Velocity along ${axis}`, ((after[axis] - before[axis]) * rateHz) / 2, 'm/s', u);
  return derive(
    {
      symbol: 'v',
      name: `Speed, ${name}`,
      unit: 'm/s',
      formula: 'v = s sqrt(v_x^2 + v_y^2)',
      variant: `in the plane of motion, central difference, ${smoothing(cutoffHz)}; s: scale of the calibration, 1`,
      source: {
        cite: 'Central differences; variance of a linear combination (JCGM 100:2008, 5.1.2)',
        status: 'derived',
      },
    },
    { v_x: component('x'), v_y: component('y'), s: scale },
    ({ v_x, v_y, s }) => s * Math.hypot(v_x, v_y),
  );
}
