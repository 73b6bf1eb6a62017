import type { Edit } from '../../../shared/model/edit.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import type { MovementTrial, TrialEvent } from '../../../shared/model/trial.ts';

/**
 * A new true capture rate. What was seen in a frame stays in that frame: events of a digitised or filmed trial keep their
 * frames, so their times follow the rate. One step of undo.
 * @param ofFrames the trial's events; empty where its times were never counted in frames
 */
export function rateEdits(
  trial: MovementTrial,
  ofFrames: readonly TrialEvent[],
  rateHz: number | null,
  from: MovementTrial['captureRateFrom'],
): Edit[] {
  const before = trial.captureRateHz;
  const edits: Edit[] = [
    {
      op: 'patch',
      kind: 'movementTrial',
      id: trial.id,
      fields: { captureRateHz: rateHz, captureRateFrom: rateHz === null ? null : from },
    },
  ];
  if (before === null || rateHz === null || before === rateHz) return edits;
  const factor = before / rateHz;
  return [
    ...edits,
    ...ofFrames.map(({ id, timeS, uS }): Edit => {
      const fields = { timeS: timeS * factor, uS: uS === null ? null : uS * factor };
      return { op: 'patch', kind: 'trialEvent', id, fields };
    }),
  ];
}

/** Events that stand for frames: those of a trial that was filmed or digitised. */
export function eventsOfFrames(file: CaseFile, trial: MovementTrial): readonly TrialEvent[] {
  const isCounted = trial.clipSha256 !== null || file.landmarkTracks.some(({ trialId }) => trialId === trial.id);
  return isCounted ? file.trialEvents.filter(({ trialId }) => trialId === trial.id) : [];
}
