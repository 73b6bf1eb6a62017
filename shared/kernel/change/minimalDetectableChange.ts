import type { Quantity } from '../../quantity.ts';
import type { Unit } from '../../units.ts';
import { derive } from '../quantity/derive.ts';

/**
 * Smallest change between two tests that is not explained by measurement error, at 95 %: MDC = 1.96 √2 SEM. Both tests
 * err, hence √2.
 *
 * @param standardError standard error of measurement (or typical error)
 * @returns in its unit
 * @source Weir 2005, J Strength Cond Res 19(1):231-240 (from memory)
 */
export function minimalDetectableChange<U extends Unit>(standardError: Quantity<U>): Quantity<U> {
  return derive(
    {
      symbol: 'MDC',
      name: 'minimal detectable change, 95 %',
      unit: standardError.unit,
      formula: 'MDC = 1.96 sqrt(2) SEM',
      variant: '95 %, normal errors',
      source: { cite: 'Weir 2005, Journal of Strength and Conditioning Research 19(1):231-240', status: 'from memory' },
    },
    { SEM: standardError },
    ({ SEM }) => 1.96 * Math.SQRT2 * SEM,
  );
}
