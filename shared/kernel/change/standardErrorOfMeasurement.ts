import { DomainError } from '../../errors.ts';
import type { Quantity } from '../../quantity.ts';
import type { Unit } from '../../units.ts';
import { derive } from '../quantity/derive.ts';
import { requirePositive } from '../quantity/requirePositive.ts';

/**
 * Standard error of measurement from a group's spread and the test's reliability: SEM = SD √(1 − ICC).
 *
 * @param deviation standard deviation between people, > 0
 * @param reliability intraclass correlation coefficient of the test, 0 to 1
 * @returns in the unit of the deviation
 * @throws DomainError 'input-out-of-range'
 * @source Weir 2005, J Strength Cond Res 19(1):231-240 (from memory)
 */
export function standardErrorOfMeasurement<U extends Unit>(
  deviation: Quantity<U>,
  reliability: Quantity<'1'>,
): Quantity<U> {
  requirePositive('standardErrorOfMeasurement', deviation);
  if (!(reliability.value >= 0 && reliability.value <= 1)) {
    throw new DomainError(
      'input-out-of-range',
      `standardErrorOfMeasurement needs a reliability of 0 to 1, got ${reliability.value}`,
    );
  }
  return derive(
    {
      symbol: 'SEM',
      name: 'standard error of measurement',
      unit: deviation.unit,
      formula: 'SEM = SD sqrt(1 - ICC)',
      variant: 'from reliability',
      source: { cite: 'Weir 2005, Journal of Strength and Conditioning Research 19(1):231-240', status: 'from memory' },
    },
    { SD: deviation, ICC: reliability },
    // A reliability within one standard uncertainty of 1 must not put a negative under the root.
    ({ SD, ICC }) => SD * Math.sqrt(Math.max(0, 1 - ICC)),
  );
}
