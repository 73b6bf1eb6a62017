import { DomainError } from '../../errors.ts';
import type { Quantity } from '../../quantity.ts';
import type { Unit } from '../../units.ts';
import { derive } from '../quantity/derive.ts';
import { deviationReading } from '../uncertainty/deviationReading.ts';

/**
 * Typical error from a test and a retest of several people: the standard deviation of the differences over √2. It is
 * the standard error of measurement without a reliability coefficient; a change common to all drops out.
 *
 * @param pairs [test, retest] of each person, at least two, in `unit`
 * @throws DomainError 'not-enough-data', 'input-out-of-range'
 * @source Hopkins 2000, Sports Med 30(1):1-15 (from memory)
 */
export function typicalError<U extends Unit>(pairs: readonly (readonly [number, number])[], unit: U): Quantity<U> {
  if (pairs.length < 2) {
    throw new DomainError(
      'not-enough-data',
      `typicalError needs at least two people tested twice, got ${pairs.length}`,
    );
  }
  const differences = pairs.map(([test, retest]) => retest - test);
  return derive(
    {
      symbol: 'TE',
      name: 'typical error',
      unit,
      formula: 'TE = s_d / sqrt(2)',
      variant: 'from test and retest',
      source: { cite: 'Hopkins 2000, Sports Medicine 30(1):1-15', status: 'from memory' },
    },
    { s_d: deviationReading('s_d', 'standard deviation of the differences', differences, unit) },
    ({ s_d }) => s_d / Math.SQRT2,
  );
}
