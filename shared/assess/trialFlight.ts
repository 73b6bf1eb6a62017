import { type FlightFrames, flightFrames } from '../kernel/trial/flightFrames.ts';
import { type Scene, scene } from '../kernel/trial/scene.ts';
import type { CaseFile } from '../model/records.ts';
import { BALL, type MovementTrial } from '../model/trial.ts';
import type { Unknown } from '../quantity.ts';
import { movementOf } from './movementOf.ts';

export interface TrialFlight extends FlightFrames {
  readonly of: 'ball' | 'body';
  readonly view: Scene;
}

/** The free flight of a trial's ball, else of the body; or why nothing flies. */
export function trialFlight(file: CaseFile, trial: MovementTrial): TrialFlight | Unknown {
  const movement = movementOf(file, trial.movementId);
  if (movement === null) return { unknown: 'this version does not know the movement' };
  const tracks = file.landmarkTracks.filter((track) => track.trialId === trial.id);
  const events = file.trialEvents.filter((event) => event.trialId === trial.id);
  const { massKg, statureM, referenceSex } = file.athlete;
  const view = scene({ tracks, events, movement, massKg, statureM, referenceSex, trial });
  if ('unknown' in view) return view;
  const of = tracks.some(({ point }) => point === BALL) ? 'ball' : 'body';
  const flight = flightFrames(view, of);
  return 'unknown' in flight ? flight : { of, view, ...flight };
}
