import { measured, type Quantity } from '../../quantity.ts';
import type { Point, PointU } from '../plane/point.ts';

/**
 * The two coordinates of a named point as quantities, `x_A` and `y_A`, for a formula's working.
 *
 * @source definition of a coordinate
 */
export function coordinates<L extends string>(
  label: L,
  point: Point,
  u: PointU,
): Record<`x_${L}` | `y_${L}`, Quantity<'m'>> {
  return {
    [`x_${label}`]: measured(`x_${label}`, `x of ${label}`, point.x, 'm', u),
    [`y_${label}`]: measured(`y_${label}`, `y of ${label}`, point.y, 'm', u),
  } as Record<`x_${L}` | `y_${L}`, Quantity<'m'>>;
}
