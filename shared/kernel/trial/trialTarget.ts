import type { MovementTrial } from '../../model/trial.ts';
import { measured, type Quantity, type Unknown } from '../../quantity.ts';

/**
 * Where the target of a trial stands, as entered: `distance` from release along the floor and `height` above it, m.
 *
 * @returns unknown where one of the two is not entered
 * @source as entered
 */
export function trialTarget({
  targetDistanceM,
  targetHeightM,
  targetDistanceUM,
  targetHeightUM,
}: MovementTrial): { readonly distance: Quantity<'m'>; readonly height: Quantity<'m'> } | Unknown {
  if (targetDistanceM === null || targetHeightM === null)
    return { unknown: 'no target: its distance or its height is not entered' };
  const why = 'entered without one';
  return {
    distance: measured('d', 'Distance to the target', targetDistanceM, 'm', targetDistanceUM ?? why),
    height: measured('y_t', 'Height of the target', targetHeightM, 'm', targetHeightUM ?? why),
  };
}
