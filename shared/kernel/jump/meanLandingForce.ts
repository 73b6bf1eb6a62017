import type { Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { requirePositive } from '../quantity/requirePositive.ts';

/**
 * Mean vertical ground force while a fall is stopped: F = W (1 + h / s), by work and energy.
 *
 * @param weight N, > 0
 * @param dropHeight m, > 0, fall of the centre of mass before contact
 * @param stoppingDistance m, > 0, fall of the centre of mass from contact to its lowest place
 * @returns N, the mean over distance
 * @throws DomainError 'input-out-of-range' if any is not above zero
 * @source work-energy theorem
 */
export function meanLandingForce(
  weight: Quantity<'N'>,
  dropHeight: Quantity<'m'>,
  stoppingDistance: Quantity<'m'>,
): Quantity<'N'> {
  requirePositive('meanLandingForce', weight, dropHeight, stoppingDistance);
  return derive(
    {
      symbol: 'F',
      name: 'mean landing force',
      unit: 'N',
      formula: 'F = W (1 + h / s)',
      variant: 'mean over the stopping distance',
      source: {
        cite: 'Work-energy theorem: the work of the net force over s takes up the energy of a fall of h',
        status: 'derived',
      },
    },
    { W: weight, h: dropHeight, s: stoppingDistance },
    ({ W, h, s }) => W * (1 + h / s),
  );
}
