import type { Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { requirePositive } from '../quantity/requirePositive.ts';

/**
 * Reactive strength ratio of a drop jump: flight time over contact time, both read from one recording. Not the reactive
 * strength index: the same jump gives another number. The two intervals share take-off, so their errors have r = −1/2.
 *
 * @param flightTime s, > 0
 * @param contactTime s, > 0
 * @returns a ratio without unit
 * @throws DomainError 'input-out-of-range' if either is not above zero
 * @source Healy, Kenny & Harrison 2018
 */
export function reactiveStrengthRatio(flightTime: Quantity<'s'>, contactTime: Quantity<'s'>): Quantity<'1'> {
  requirePositive('reactiveStrengthRatio', flightTime, contactTime);
  return derive(
    {
      symbol: 'RSR',
      name: 'reactive strength ratio',
      unit: '1',
      formula: 'RSR = t_f / t_c',
      variant: 'flight time over contact time',
      source: {
        cite: 'Healy, Kenny & Harrison 2018, International Journal of Sports Physiology and Performance',
        status: 'published',
      },
    },
    { t_f: flightTime, t_c: contactTime },
    ({ t_f, t_c }) => t_f / t_c,
    { 't_c|t_f': -0.5 },
  );
}
