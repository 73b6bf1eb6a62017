import { measured, type Quantity, type Source } from '../../quantity.ts';
import type { Unit } from '../../units.ts';
import { deviationOf, meanOf, requireReadings } from './readings.ts';

const TYPE_A: Source = {
  cite: 'JCGM 100:2008, 4.2 (type A evaluation): u = s / √n with s the sample standard deviation, n − 1',
  status: 'published',
};

/**
 * Mean of repeated readings with its type A standard uncertainty.
 *
 * @param readings at least two, finite, in `unit`, taken independently under the same conditions
 * @returns mean, u = s/√n with n − 1 degrees of freedom
 * @throws DomainError 'not-enough-data', 'input-out-of-range'
 * @source JCGM 100:2008, 4.2
 */
export function meanReading<U extends Unit>(
  symbol: string,
  name: string,
  readings: readonly number[],
  unit: U,
): Quantity<U> {
  requireReadings('meanReading', readings, 2);
  return measured(symbol, name, meanOf(readings), unit, deviationOf(readings) / Math.sqrt(readings.length), TYPE_A);
}
