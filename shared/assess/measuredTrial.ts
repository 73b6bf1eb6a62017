import { measureTrial, type TrialMeasures } from '../kernel/trial/measureTrial.ts';
import type { CaseFile } from '../model/records.ts';
import type { MovementTrial } from '../model/trial.ts';
import { movementOf } from './movementOf.ts';

/**
 * The last result of each trial, found by its first track or event, with everything it was computed from. Measuring a
 * digitised trial takes tens of milliseconds; without this every letter typed anywhere in the case would wait for it.
 * The answer is the same with or without.
 */
const remembered = new WeakMap<object, { readonly from: readonly unknown[]; readonly measures: TrialMeasures }>();

/** What one trial yields by its points and events. Null where there is nothing to compute from, or no such movement. */
export function measuredTrial(file: CaseFile, trial: MovementTrial): TrialMeasures | null {
  const movement = movementOf(file, trial.movementId);
  const tracks = file.landmarkTracks.filter((track) => track.trialId === trial.id);
  const events = file.trialEvents.filter((event) => event.trialId === trial.id);
  const repeats = file.pointRepeats.filter((repeat) => repeat.trialId === trial.id);
  const anchor = tracks[0] ?? events[0];
  // A trial of typed values alone has nothing to compute; its checkpoints stay open until something is digitised.
  if (movement === null || anchor === undefined) return null;
  const { massKg, statureM, referenceSex } = file.athlete;
  // Words beside the trial change none of its numbers.
  const { label: _label, note: _note, painNrs: _pain, filmedOn: _filmedOn, calibrationDraft: _draft, ...rest } = trial;
  const { calibration, frameTimesS, ...facts } = rest;
  // An edit of any field reads the whole record anew, so what is no plain value is known by what it says, not by identity.
  const said = JSON.stringify([calibration, frameTimesS]);
  const from = [
    movement,
    ...tracks,
    ...events,
    ...repeats,
    ...Object.values(facts),
    said,
    massKg,
    statureM,
    referenceSex,
  ];
  const last = remembered.get(anchor);
  if (last !== undefined && isSame(last.from, from)) return last.measures;
  const measures = measureTrial({ trial, tracks, events, repeats, movement, massKg, statureM, referenceSex });
  remembered.set(anchor, { from, measures });
  return measures;
}

function isSame(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.length === b.length && a.every((one, i) => Object.is(one, b[i]));
}
