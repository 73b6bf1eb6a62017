import { frameClock } from '../../../shared/kernel/event/frameClock.ts';
import type { Edit } from '../../../shared/model/edit.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import type { MovementTrial, TrialEvent } from '../../../shared/model/trial.ts';

/** A new true capture rate, as clockEdits. */
export function rateEdits(
  trial: MovementTrial,
  ofFrames: readonly TrialEvent[],
  rateHz: number | null,
  from: MovementTrial['captureRateFrom'],
): Edit[] {
  return clockEdits(trial, ofFrames, { captureRateHz: rateHz, captureRateFrom: rateHz === null ? null : from });
}

/**
 * Another clock for a trial. What was seen in a frame stays in that frame: events of a digitised or filmed trial keep their
 * frames, so their times follow the clock. One step of undo.
 * @param ofFrames the trial's events; empty where its times were never counted in frames
 */
export function clockEdits(
  trial: MovementTrial,
  ofFrames: readonly TrialEvent[],
  fields: Partial<Pick<MovementTrial, 'captureRateHz' | 'captureRateFrom' | 'frameTimesS'>>,
): Edit[] {
  const [before, after] = [frameClock(trial), frameClock({ ...trial, ...fields })];
  const edits: Edit[] = [{ op: 'patch', kind: 'movementTrial', id: trial.id, fields }];
  const isSame = before?.rateHz === after?.rateHz && fields.frameTimesS === undefined;
  if (before === null || after === null || isSame) return edits;
  return [
    ...edits,
    ...ofFrames.map(({ id, timeS, uS }): Edit => {
      const at = after.timeOf(before.frameAt(timeS));
      const u = uS === null ? null : (uS * before.rateAt(timeS)) / after.rateAt(at);
      return { op: 'patch', kind: 'trialEvent', id, fields: { timeS: at, uS: u } };
    }),
  ];
}

/** Events that stand for frames: those of a trial that was filmed or digitised. */
export function eventsOfFrames(file: CaseFile, trial: MovementTrial): readonly TrialEvent[] {
  const isCounted = trial.clipSha256 !== null || file.landmarkTracks.some(({ trialId }) => trialId === trial.id);
  return isCounted ? file.trialEvents.filter(({ trialId }) => trialId === trial.id) : [];
}
