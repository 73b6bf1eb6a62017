import { measureTrial, type TrialMeasures } from '../kernel/trial/measureTrial.ts';
import type { CaseFile } from '../model/records.ts';
import type { MovementTrial } from '../model/trial.ts';
import { trialInput } from './trialInput.ts';

/**
 * The last result of each trial, found by its first track or event, with everything it was computed from. Measuring a
 * digitised trial takes tens of milliseconds; without this every letter typed anywhere in the case would wait for it.
 * The answer is the same with or without.
 */
const remembered = new WeakMap<object, { readonly from: readonly unknown[]; readonly measures: TrialMeasures }>();

/** What one trial yields by its points and events. Null where there is nothing to compute from, or no such movement. */
export function measuredTrial(file: CaseFile, trial: MovementTrial): TrialMeasures | null {
  const input = trialInput(file, trial);
  if (input === null) return null;
  const { tracks, events, repeats = [], trial: _trial, ...athlete } = input;
  const anchor = tracks[0] ?? events[0];
  // A trial of typed values alone has nothing to compute; its checkpoints stay open until something is digitised.
  if (anchor === undefined) return null;
  // Words beside the trial change none of its numbers.
  const { label: _label, note: _note, painNrs: _pain, filmedOn: _filmedOn, calibrationDraft: _draft, ...rest } = trial;
  const { calibration, frameTimesS, ...facts } = rest;
  // An edit of any field reads the whole record anew, so what is no plain value is known by what it says, not by identity.
  const said = JSON.stringify([calibration, frameTimesS]);
  const from = [...tracks, ...events, ...repeats, ...Object.values(facts), said, ...Object.values(athlete)];
  const last = remembered.get(anchor);
  if (last !== undefined && isSame(last.from, from)) return last.measures;
  const measures = measureTrial(input);
  remembered.set(anchor, { from, measures });
  return measures;
}

function isSame(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.length === b.length && a.every((one, i) => Object.is(one, b[i]));
}
