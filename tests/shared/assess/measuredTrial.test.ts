import { expect, test } from 'vitest';
import { measuredTrial } from '../../../shared/assess/measuredTrial.ts';
import { applyEdits } from '../../../shared/model/applyEdits.ts';
import { measureTrial } from '../../../shared/kernel/trial/measureTrial.ts';
import { movementById } from '../../../shared/knowledge/movements/index.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import { sampleCase } from '../../support/sampleCase.ts';

function afresh(file: CaseFile) {
  const [trial] = file.movementTrials;
  const movement = movementById(trial?.movementId ?? '');
  if (trial === undefined || movement === null) throw new Error('the sample case needs a trial of a known movement');
  const tracks = file.landmarkTracks.filter((track) => track.trialId === trial.id);
  const events = file.trialEvents.filter((event) => event.trialId === trial.id);
  return { trial, measures: measureTrial({ trial, tracks, events, movement, ...file.athlete }) };
}

test('what is remembered is what would be computed again', () => {
  const file = sampleCase();
  const { trial, measures } = afresh(file);
  expect(measuredTrial(file, trial)).toEqual(measures);
  expect(measuredTrial(file, trial)).toBe(measuredTrial(file, trial));
});

test('a note leaves the numbers alone; a capture rate, an event or the body mass does not', () => {
  const [first] = sampleCase().movementTrials;
  const file = applyEdits(sampleCase(), [
    {
      op: 'patch',
      kind: 'movementTrial',
      id: first?.id ?? '',
      fields: { calibration: { kind: 'metres', pointUM: 0.01 } },
    },
  ]);
  const { trial } = afresh(file);
  const before = measuredTrial(file, trial);
  const edited = (next: CaseFile) => measuredTrial(next, next.movementTrials[0] ?? trial);
  const patchTrial = (fields: object) =>
    applyEdits(file, [{ op: 'patch', kind: 'movementTrial', id: trial.id, fields }]);

  expect(edited(patchTrial({ note: 'seen again', painNrs: 2 }))).toBe(before);
  expect(edited(patchTrial({ captureRateHz: 50 }))).toEqual(afresh(patchTrial({ captureRateHz: 50 })).measures);
  expect(edited(patchTrial({ captureRateHz: 50 }))).not.toBe(before);

  const [event] = file.trialEvents;
  const moved = applyEdits(file, [
    { op: 'patch', kind: 'trialEvent', id: event?.id ?? '', fields: { timeS: (event?.timeS ?? 0) + 0.01 } },
  ]);
  expect(edited(moved)).toEqual(afresh(moved).measures);
  const heavier = applyEdits(file, [{ op: 'patch', kind: 'athlete', id: file.athlete.id, fields: { massKg: 99 } }]);
  expect(edited(heavier)).toEqual(afresh(heavier).measures);
});
