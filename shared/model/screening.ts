import { z } from 'zod';
import { day, finite, id, line, pain, sideOrNone, text } from './parts.ts';

/** Grades are words. Pain is never one of them. */
export const GRADES = ['met', 'met-with-compensation', 'not-met'] as const;
export const grade = z.enum(GRADES);
export type Grade = z.infer<typeof grade>;

export const screeningSession = z.strictObject({
  id,
  caseId: id,
  heldOn: day,
  rater: line,
  batteryId: line,
  batteryVersion: line,
  note: text,
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
});
export type ScreeningResult = z.infer<typeof screeningResult>;
