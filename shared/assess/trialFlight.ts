import { type FlightFrames, flightFrames } from '../kernel/trial/flightFrames.ts';
import { type Scene, scene } from '../kernel/trial/scene.ts';
import type { CaseFile } from '../model/records.ts';
import { BALL, type MovementTrial } from '../model/trial.ts';
import type { Unknown } from '../quantity.ts';
import { trialInput } from './trialInput.ts';

export interface TrialFlight extends FlightFrames {
  readonly of: 'ball' | 'body';
  readonly view: Scene;
}

/** The free flight of a trial's ball, else of the body; or why nothing flies. */
export function trialFlight(file: CaseFile, trial: MovementTrial): TrialFlight | Unknown {
  const input = trialInput(file, trial);
  if (input === null) return { unknown: 'this version does not know the movement' };
  const view = scene(input);
  if ('unknown' in view) return view;
  const of = input.tracks.some(({ point }) => point === BALL) ? 'ball' : 'body';
  const flight = flightFrames(view, of);
  return 'unknown' in flight ? flight : { of, view, ...flight };
}
