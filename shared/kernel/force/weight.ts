import type { Quantity } from '../../quantity.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { derive } from '../quantity/derive.ts';
import { requirePositive } from '../quantity/requirePositive.ts';

/**
 * Weight of a body, W = m g, with standard gravity.
 *
 * @param mass kg, > 0
 * @returns N
 * @throws DomainError 'input-out-of-range' if the mass is not above zero
 * @source Newton's second law; g from the 3rd CGPM (1901)
 */
export function weight(mass: Quantity<'kg'>): Quantity<'N'> {
  requirePositive('weight', mass);
  return derive(
    {
      symbol: 'W',
      name: 'weight',
      unit: 'N',
      formula: 'W = m g',
      source: { cite: "Newton's second law with standard gravity (3rd CGPM, 1901)", status: 'published' },
    },
    { m: mass, g: standardGravity },
    ({ m, g }) => m * g,
  );
}
