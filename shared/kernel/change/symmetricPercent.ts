import { DomainError } from '../../errors.ts';
import type { Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { requirePositive } from '../quantity/requirePositive.ts';

/**
 * Symmetric percentage of a change: ln(after / before). A gain and the loss that undoes it have the same size, unlike
 * plain percentages.
 *
 * @param before > 0
 * @param after > 0, same unit
 * @returns ratio without unit; times 100 for symmetric per cent
 * @throws DomainError 'unit-mismatch', 'input-out-of-range'
 * @source Cole 2000, Statistics in Medicine 19:3109-3125 (from memory)
 */
export function symmetricPercent(before: Quantity, after: Quantity): Quantity<'1'> {
  if (before.unit !== after.unit) {
    throw new DomainError('unit-mismatch', `symmetricPercent needs one unit, got ${before.unit} and ${after.unit}`);
  }
  requirePositive('symmetricPercent', before, after);
  return derive(
    {
      symbol: 'c',
      name: 'change, symmetric per cent',
      unit: '1',
      formula: 'c = log(x_2 / x_1)',
      variant: 'natural logarithm',
      source: { cite: 'Cole 2000, Statistics in Medicine 19:3109-3125', status: 'from memory' },
    },
    { x_2: after, x_1: before },
    ({ x_2, x_1 }) => Math.log(x_2 / x_1),
  );
}
