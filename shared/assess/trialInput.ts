import type { TrialInput } from '../kernel/trial/scene.ts';
import type { CaseFile } from '../model/records.ts';
import type { MovementTrial } from '../model/trial.ts';
import { movementOf } from './movementOf.ts';

/** One trial with everything of the case that its measures rest on; null where this version does not know the movement. */
export function trialInput(file: CaseFile, trial: MovementTrial): TrialInput | null {
  const movement = movementOf(file, trial.movementId);
  if (movement === null) return null;
  const ofTrial = (record: { readonly trialId: string }) => record.trialId === trial.id;
  const { massKg, massUKg, statureM, referenceSex } = file.athlete;
  return {
    trial,
    tracks: file.landmarkTracks.filter(ofTrial),
    events: file.trialEvents.filter(ofTrial),
    repeats: file.pointRepeats.filter(ofTrial),
    movement,
    massKg,
    massUKg,
    statureM,
    referenceSex,
  };
}
