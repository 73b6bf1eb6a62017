import { z } from 'zod';
import { batteryProblems } from '../knowledge/screening/batteryProblems.ts';
import { batteryBody, MOST_TRIALS } from './battery.ts';
import { day, finite, id, line, pain, sideOrNone, text } from './parts.ts';

/** Grades are words. Pain is never one of them. */
export const GRADES = ['met', 'met-with-compensation', 'not-met'] as const;
export const grade = z.enum(GRADES);
export type Grade = z.infer<typeof grade>;

/** A battery that may be used. */
export const soundBattery = batteryBody.superRefine((battery, context) => {
  for (const { path, words } of batteryProblems(battery)) {
    context.addIssue({ code: 'custom', path: [...path], message: words });
  }
});

export const screeningSession = z.strictObject({
  id,
  caseId: id,
  heldOn: day,
  rater: line,
  batteryId: line,
  batteryVersion: line,
  note: text,
  /** Of a battery of one's own: the very version it was taken with, whole. Null: one of the program. */
  battery: soundBattery.nullable(),
});
export type ScreeningSession = z.infer<typeof screeningSession>;

/** One item, one side. Exactly the field that the item's kind asks for is filled; the others stay null. */
export const screeningResult = z.strictObject({
  id,
  sessionId: id,
  itemId: line,
  side: sideOrNone,
  /** Measured or counted items: in the item's own SI unit. */
  valueSi: finite.nullable(),
  grade: grade.nullable(),
  /** Clearing items: true means it provoked the symptom. */
  isPositive: z.boolean().nullable(),
  painNrs: pain.nullable(),
  note: text,
  /** Every trial in the order taken, in SI; `valueSi` is what the item makes of them. Null: one value, and that is it. */
  trialsSi: z.array(finite).min(2).max(MOST_TRIALS).nullable(),
  /** What it was taken with, how the athlete stood or lay, and whether in shoes. Empty and null: not recorded. */
  device: line,
  position: line,
  shoes: z.boolean().nullable(),
});
export type ScreeningResult = z.infer<typeof screeningResult>;
