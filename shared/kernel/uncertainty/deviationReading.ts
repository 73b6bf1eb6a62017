import { measured, type Quantity } from '../../quantity.ts';
import type { Unit } from '../../units.ts';
import { deviationOf, requireReadings } from './readings.ts';

/**
 * Sample standard deviation of repeated readings as a quantity.
 *
 * @param readings at least two, finite, in `unit`
 * @returns s with u = s/√(2(n − 1)), for normal readings
 * @throws DomainError 'not-enough-data', 'input-out-of-range'
 * @source JCGM 100:2008, E.4.3
 */
export function deviationReading<U extends Unit>(
  symbol: string,
  name: string,
  readings: readonly number[],
  unit: U,
): Quantity<U> {
  requireReadings('deviationReading', readings, 2);
  const s = deviationOf(readings);
  return measured(symbol, name, s, unit, s / Math.sqrt(2 * (readings.length - 1)), {
    cite: 'Sample standard deviation, n − 1; u for normal readings: JCGM 100:2008, E.4.3',
    status: 'published',
  });
}
