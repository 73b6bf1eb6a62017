import type { Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { requirePositive } from '../quantity/requirePositive.ts';

/**
 * Reactive strength index of a drop jump: height over contact time.
 *
 * @param height m, > 0
 * @param contactTime s, > 0
 * @param isOneRecording true where height comes from the flight time of the recording that gave the contact time: the
 *   two then share the instant of take-off, a late reading of which lengthens one and shortens the other (r = −1/2)
 * @returns m/s
 * @throws DomainError 'input-out-of-range' if either is not above zero
 * @source Young 1995 (from memory); Healy, Kenny & Harrison 2018
 */
export function reactiveStrengthIndex(
  height: Quantity<'m'>,
  contactTime: Quantity<'s'>,
  isOneRecording: boolean,
): Quantity<'m/s'> {
  requirePositive('reactiveStrengthIndex', height, contactTime);
  return derive(
    {
      symbol: 'RSI',
      name: 'reactive strength index',
      unit: 'm/s',
      formula: 'RSI = h / t_c',
      variant: 'height over contact time',
      source: {
        cite: 'Young 1995 (from memory); definition as in Healy, Kenny & Harrison 2018, International Journal of Sports Physiology and Performance',
        status: 'published',
      },
    },
    { h: height, t_c: contactTime },
    ({ h, t_c }) => h / t_c,
    isOneRecording ? { 'h|t_c': -0.5 } : {},
  );
}
