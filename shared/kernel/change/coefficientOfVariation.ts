import type { Quantity } from '../../quantity.ts';
import type { Unit } from '../../units.ts';
import { derive } from '../quantity/derive.ts';
import { requirePositive } from '../quantity/requirePositive.ts';
import { deviationReading } from '../uncertainty/deviationReading.ts';
import { meanReading } from '../uncertainty/meanReading.ts';

/**
 * Coefficient of variation: sample standard deviation (n − 1) over the mean.
 *
 * @param readings at least two, with a mean above zero, on a scale with a true zero
 * @returns ratio without unit; times 100 for per cent
 * @throws DomainError 'not-enough-data', 'input-out-of-range'
 * @source definition
 */
export function coefficientOfVariation(readings: readonly number[], unit: Unit): Quantity<'1'> {
  const mean = meanReading('x_mean', 'mean', readings, unit);
  requirePositive('coefficientOfVariation', mean);
  return derive(
    {
      symbol: 'CV',
      name: 'coefficient of variation',
      unit: '1',
      formula: 'CV = s / x_mean',
      variant: 'sample standard deviation, n − 1',
      source: { cite: 'Definition', status: 'convention' },
    },
    { s: deviationReading('s', 'standard deviation', readings, unit), x_mean: mean },
    ({ s, x_mean }) => s / x_mean,
  );
}
