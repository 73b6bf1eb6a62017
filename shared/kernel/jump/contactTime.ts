import type { Quantity } from '../../quantity.ts';
import { intervalFromFrames } from './intervalFromFrames.ts';

/**
 * Time on the ground of a drop jump, first to last contact. Parameters, uncertainty and errors: intervalFromFrames.
 *
 * @param timeS s, > 0
 * @param frameRateHz of the film it was counted on, frames a second; null: not from a film
 * @returns s
 * @source definition; Healy, Kenny & Harrison 2018
 */
export function contactTime(timeS: number, frameRateHz: number | null): Quantity<'s'> {
  return intervalFromFrames('t_c', 'contact time', timeS, frameRateHz);
}
