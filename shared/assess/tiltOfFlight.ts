import { tiltFromFlight } from '../kernel/flight/tiltFromFlight.ts';
import { ballDrag } from '../kernel/trial/ballDrag.ts';
import { readingOr } from '../kernel/trial/readingOr.ts';
import type { CaseFile } from '../model/records.ts';
import type { MovementTrial } from '../model/trial.ts';
import { isKnown, type Reading, type Unknown } from '../quantity.ts';
import { trialFlight, type TrialFlight } from './trialFlight.ts';

export interface FlightTilt {
  readonly of: TrialFlight['of'];
  /** What the picture's down is turned by if free fall points truly down; or why this flight does not tell. */
  readonly tilt: Reading<'rad'>;
}

/** A tilt known worse than this is better taken from a plumb line: a convention. */
const COARSEST_TILT_U = (2 * Math.PI) / 180;

/** How far the picture is turned as the free flight of a trial has it, whatever tilt is entered; or why nothing flies. */
export function tiltOfFlight(file: CaseFile, trial: MovementTrial): FlightTilt | Unknown {
  const { calibration } = trial;
  const untilted = calibration === null || calibration.kind === 'metres' ? calibration : { ...calibration, tiltDeg: 0 };
  const flight = trialFlight(file, { ...trial, calibration: untilted });
  if ('unknown' in flight) return flight;
  const { of, samples } = flight;
  const drag = of === 'ball' ? ballDrag(trial) : null;
  if (of === 'ball' && drag === null) {
    return { of, tilt: { unknown: 'air turns a ball’s path too, and no ball is named' } };
  }
  const tilt = readingOr(() => tiltFromFlight(samples, drag));
  if (!isKnown(tilt) || (tilt.u ?? 0) <= COARSEST_TILT_U) return { of, tilt };
  return {
    of,
    tilt: { unknown: `this flight tells it only to ± ${((2 * (tilt.u ?? 0) * 180) / Math.PI).toFixed(0)}°` },
  };
}
