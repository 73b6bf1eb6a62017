import type { CaseFile } from '../model/records.ts';

/** The day a case file speaks for: that of its newest recording, else the day it was opened. No clock is asked. */
export function asOf(file: CaseFile): string {
  const days = [
    file.case.openedOn,
    ...file.screeningSessions.map((session) => session.heldOn),
    ...file.jumpTests.map((test) => test.heldOn),
    ...file.movementTrials.map((trial) => trial.filmedOn),
    ...file.enteredMeasures.map((measure) => measure.takenOn),
  ];
  return days.reduce((newest, day) => (day > newest ? day : newest));
}
