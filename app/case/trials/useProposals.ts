import { useMemo } from 'react';
import { movementOf } from '../../../shared/assess/movementOf.ts';
import { type EventProposal, proposeEvents } from '../../../shared/kernel/trial/proposeEvents.ts';
import type { MovementTrial } from '../../../shared/model/trial.ts';
import { useCase } from '../useCase.ts';

export interface LabelledProposal extends EventProposal {
  readonly label: string;
}

/** What the points suggest for the events nobody has set. They count for nothing until a person takes them. */
export function useProposals(trial: MovementTrial): readonly LabelledProposal[] {
  const { file } = useCase();
  const { landmarkTracks, athlete, ownMovements } = file;
  const movement = useMemo(() => movementOf({ ownMovements }, trial.movementId), [ownMovements, trial.movementId]);
  const all = useMemo(() => {
    const tracks = landmarkTracks.filter((track) => track.trialId === trial.id);
    if (movement === null || tracks.length === 0) return [];
    const { massKg, statureM, referenceSex } = athlete;
    return proposeEvents({ trial, tracks, events: [], movement, massKg, statureM, referenceSex });
  }, [landmarkTracks, athlete, movement, trial]);
  const set = new Set(file.trialEvents.filter(({ trialId }) => trialId === trial.id).map(({ event }) => event));
  return all
    .filter(({ event }) => !set.has(event))
    .map((one) => ({ ...one, label: movement?.events.find(({ id }) => id === one.event)?.label ?? one.event }));
}
