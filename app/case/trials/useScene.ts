import { useMemo } from 'react';
import { movementOf } from '../../../shared/assess/movementOf.ts';
import { type Scene, scene, type TrialInput } from '../../../shared/kernel/trial/scene.ts';
import type { MovementTrial } from '../../../shared/model/trial.ts';
import { useCase } from '../useCase.ts';

/** A trial prepared for measuring, with what it was prepared from; null where it has no movement or no capture rate. */
export function useScene(trial: MovementTrial): { readonly view: Scene; readonly input: TrialInput } | null {
  const { landmarkTracks, trialEvents, pointRepeats, athlete, ownMovements } = useCase().file;
  return useMemo(() => {
    const movement = movementOf({ ownMovements }, trial.movementId);
    if (movement === null) return null;
    const ofTrial = (record: { readonly trialId: string }) => record.trialId === trial.id;
    const { massKg, massUKg, statureM, referenceSex } = athlete;
    const input: TrialInput = {
      trial,
      tracks: landmarkTracks.filter(ofTrial),
      events: trialEvents.filter(ofTrial),
      repeats: pointRepeats.filter(ofTrial),
      movement,
      massKg,
      massUKg,
      statureM,
      referenceSex,
    };
    const view = scene(input);
    return 'unknown' in view ? null : { view, input };
  }, [trial, landmarkTracks, trialEvents, pointRepeats, athlete, ownMovements]);
}
