import type { Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { requirePositive } from '../quantity/requirePositive.ts';

/**
 * Mean power of a fall from the height of a jump, P = √4.9 · 9.81 m √h, known as the Lewis formula. It describes falling
 * from the apex, not pushing off, and is far below the peak power of the jump; kept because students meet it.
 *
 * @param height m, > 0
 * @param mass kg, > 0
 * @returns W
 * @throws DomainError 'input-out-of-range' if height or mass is not above zero
 * @source as commonly printed; equals m g √(g h / 2)
 */
export function lewisPower(height: Quantity<'m'>, mass: Quantity<'kg'>): Quantity<'W'> {
  requirePositive('lewisPower', height, mass);
  return derive(
    {
      symbol: 'P',
      name: 'mean power of falling, Lewis formula',
      unit: 'W',
      formula: 'P = sqrt(4.9) 9.81 m sqrt(h)',
      variant: 'not the power of the push-off',
      source: {
        cite: 'Lewis formula as commonly printed; equals m g √(g h / 2), the mean power of a free fall',
        status: 'derived',
      },
    },
    { m: mass, h: height },
    ({ m, h }) => Math.sqrt(4.9) * 9.81 * m * Math.sqrt(h),
  );
}
