import { measured, type Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import type { Point, PointU } from './point.ts';

/**
 * How far the picture's down is turned from true down (anticlockwise positive), from something that hangs or stands
 * true: a plumb line, a post, the edge of a door.
 *
 * @param top, bottom of the line, pixels, y down
 * @param pointUPx standard uncertainty of one coordinate, px, or why there is none
 * @returns rad; the `tilt` of a calibration by length
 * @throws DomainError 'input-out-of-range' if the two coincide
 * @source plane geometry
 */
export function tiltFromPlumbLine(top: Point, bottom: Point, pointUPx: PointU): Quantity<'rad'> {
  const pixel = (symbol: string, name: string, value: number) => measured(symbol, name, value, '{px}', pointUPx);
  return derive(
    {
      symbol: 'τ',
      name: 'Tilt of the picture',
      unit: 'rad',
      formula: 'τ = atan2(x_1 - x_2, y_2 - y_1)',
      variant: 'pixels, y down; 1: top, 2: bottom',
      source: { cite: 'Plane geometry', status: 'derived' },
    },
    {
      x_1: pixel('x_1', 'x of the top', top.x),
      y_1: pixel('y_1', 'y of the top', top.y),
      x_2: pixel('x_2', 'x of the bottom', bottom.x),
      y_2: pixel('y_2', 'y of the bottom', bottom.y),
    },
    (p) => (p.x_1 === p.x_2 && p.y_1 === p.y_2 ? Number.NaN : Math.atan2(p.x_1 - p.x_2, p.y_2 - p.y_1)),
  );
}
