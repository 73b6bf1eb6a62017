import type { Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { requirePositive } from '../quantity/requirePositive.ts';

/**
 * Modified reactive strength index of a countermovement jump: height over time from first movement to take-off.
 * Not the reactive strength index, which divides by the contact time of a drop jump.
 *
 * @param height m, > 0
 * @param timeToTakeoff s, > 0
 * @returns m/s
 * @throws DomainError 'input-out-of-range' if either is not above zero
 * @source Ebben & Petushek 2010, J Strength Cond Res 24(8):1983-1987 (citation from memory)
 */
export function reactiveStrengthIndexModified(height: Quantity<'m'>, timeToTakeoff: Quantity<'s'>): Quantity<'m/s'> {
  requirePositive('reactiveStrengthIndexModified', height, timeToTakeoff);
  return derive(
    {
      symbol: 'RSI_mod',
      name: 'reactive strength index, modified',
      unit: 'm/s',
      formula: 'RSI_mod = h / t_to',
      source: {
        cite: 'Ebben & Petushek 2010, Journal of Strength and Conditioning Research 24(8):1983-1987 (citation from memory)',
        status: 'published',
      },
    },
    { h: height, t_to: timeToTakeoff },
    ({ h, t_to }) => h / t_to,
  );
}
