import type { Quantity } from '../../quantity.ts';
import { coordinates } from '../angle/coordinates.ts';
import type { Point, PointU } from '../plane/point.ts';
import { derive } from '../quantity/derive.ts';

/**
 * Mean speed between two digitised places: distance over time. More frames a second make it worse, not better:
 * u = √2 u_p/Δt along the path. For a ball in flight fit the flight instead.
 *
 * @param from, to m
 * @param interval s between them, > 0
 * @param pointU standard uncertainty of one coordinate, m, or why there is none
 * @returns m/s, ≥ 0
 * @throws DomainError 'input-out-of-range'
 * @source definition
 */
export function twoPointSpeed(from: Point, to: Point, interval: Quantity<'s'>, pointU: PointU): Quantity<'m/s'> {
  return derive(
    {
      symbol: 'v',
      name: 'Speed between two frames',
      unit: 'm/s',
      formula: 'v = sqrt((x_B - x_A)^2 + (y_B - y_A)^2) / Δt',
      source: { cite: 'Definition', status: 'derived' },
    },
    { ...coordinates('A', from, pointU), ...coordinates('B', to, pointU), Δt: interval },
    (p) => (p.Δt > 0 ? Math.hypot(p.x_B - p.x_A, p.y_B - p.y_A) / p.Δt : Number.NaN),
  );
}
