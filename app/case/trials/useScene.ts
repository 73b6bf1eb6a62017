import { trialInput } from '../../../shared/assess/trialInput.ts';
import { type Scene, scene, type TrialInput } from '../../../shared/kernel/trial/scene.ts';
import type { MovementTrial } from '../../../shared/model/trial.ts';
import { type OpenCase, useCase } from '../useCase.ts';

interface Prepared {
  readonly view: Scene;
  readonly input: TrialInput;
}

/** The last scene of each trial and the lists it was made from: curves, tables and models beside each other share it. */
const prepared = new WeakMap<MovementTrial, { readonly from: readonly unknown[]; readonly found: Prepared | null }>();

/** A trial prepared for measuring, with what it was prepared from; null where it has no movement or no capture rate. */
export function useScene(trial: MovementTrial): Prepared | null {
  const { file } = useCase();
  const { landmarkTracks, trialEvents, pointRepeats, athlete, ownMovements } = file;
  const from = [landmarkTracks, trialEvents, pointRepeats, athlete, ownMovements];
  const last = prepared.get(trial);
  if (last?.from.every((one, i) => one === from[i]) === true) return last.found;
  const found = prepare(file, trial);
  prepared.set(trial, { from, found });
  return found;
}

function prepare(file: OpenCase['file'], trial: MovementTrial): Prepared | null {
  const input = trialInput(file, trial);
  if (input === null) return null;
  const view = scene(input);
  return 'unknown' in view ? null : { view, input };
}
