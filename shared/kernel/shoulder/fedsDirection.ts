import type { Direction } from '../../model/shoulder.ts';
import type { Classified } from './classified.ts';

/**
 * The main direction: the one most events went in. More than one direction is recorded beside it and is none of its own.
 *
 * @param directions one an event; null where not recorded
 * @source Kuhn 2011, J Shoulder Elbow Surg 20:548
 */
export function fedsDirection(directions: readonly (Direction | null)[]): Classified<Direction> {
  const known = directions.filter((direction) => direction !== null);
  if (known.length === 0) return { is: null, because: 'no direction is recorded' };
  const counts = [...new Set(known)]
    .map((direction) => ({ direction, count: known.filter((one) => one === direction).length }))
    .toSorted((a, b) => b.count - a.count);
  const [most, next] = counts;
  const left = directions.length - known.length;
  // Events without a direction may yet turn out to be of the other one.
  if (most === undefined || most.count <= (next?.count ?? 0) + left) {
    return { is: null, because: `no direction is sure to have most of the ${directions.length} events` };
  }
  return { is: most.direction, because: `${most.count} of ${directions.length} events` };
}
