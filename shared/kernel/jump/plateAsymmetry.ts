import type { Quantity } from '../../quantity.ts';
import { asymmetry } from '../change/asymmetry.ts';

/**
 * What one plate took against the other, by the bilateral index, the formula for tests on two legs; its name stands in
 * the working. Positive where the first took more.
 *
 * @param impulses N·s of each plate from onset to take-off, in the order of the plates
 * @returns ratio without unit; null unless there are two plates that both took something
 * @source Bishop, Read, Chavda & Turner 2016, Strength Cond J 38(6):27-32 (formula from memory)
 */
export function plateAsymmetry(impulses: readonly Quantity<'N.s'>[]): Quantity<'1'> | null {
  const [a, b] = impulses;
  if (a === undefined || b === undefined || impulses.length > 2 || !(a.value > 0 && b.value > 0)) return null;
  return asymmetry('bilateral-index', a, b);
}
