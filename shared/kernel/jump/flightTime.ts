import type { Quantity } from '../../quantity.ts';
import { intervalFromFrames } from './intervalFromFrames.ts';

/**
 * Time in the air, last contact to first contact. Parameters, uncertainty and errors: intervalFromFrames.
 *
 * @param timeS s, > 0
 * @param frameRateHz of the film it was counted on, frames a second; null: not from a film
 * @returns s
 * @source definition
 */
export function flightTime(timeS: number, frameRateHz: number | null): Quantity<'s'> {
  return intervalFromFrames('t_f', 'flight time', timeS, frameRateHz);
}
