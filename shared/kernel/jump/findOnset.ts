import type { QuietWindow } from './quietWindow.ts';

/** The force must stay away from body weight this long, and the onset is set back by as much. */
export const ONSET_PERSISTENCE_S = 0.03;

/**
 * First movement of a jump: the first sample after quiet stance from which the force differs from its mean by more than
 * 5 SD for 30 ms, set back 30 ms, but never into the stance.
 *
 * @param forceN N, all plates together, finite
 * @param rateHz samples a second, > 0
 * @param quiet the stance before it
 * @param takeoff sample number, after the stance
 * @returns sample number, between the end of the stance and take-off
 * @source Owen, Watkins, Kilduff, Bevan & Bennett 2014, J Strength Cond Res 28(6):1552-1558 (5 SD, 30 ms before); that
 *   the difference must persist is a convention
 */
export function findOnset(forceN: Float64Array, rateHz: number, quiet: QuietWindow, takeoff: number): number {
  const persistence = Math.round(ONSET_PERSISTENCE_S * rateHz);
  let run = 0;
  for (let k = quiet.end; k < takeoff; k++) {
    run = Math.abs((forceN[k] as number) - quiet.meanN) > 5 * quiet.sdN ? run + 1 : 0;
    if (run >= persistence) return Math.max(quiet.end, k - run + 1 - persistence);
  }
  return quiet.end;
}
