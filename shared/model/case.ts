import { z } from 'zod';
import { day, id, line, text } from './parts.ts';

/** What a case is for. Decides which sections are required and which report is composed; may change with nothing lost. */
export const PURPOSES = ['intake', 'study', 'referral'] as const;
export const purpose = z.enum(PURPOSES);
export type Purpose = z.infer<typeof purpose>;

export const caseRecord = z.strictObject({
  id,
  athleteId: id,
  /** Running number shown to people, `2026-014`. */
  number: line,
  purpose,
  openedOn: day,
  /** Who assesses: printed on the report. */
  practitioner: line,
  /** The question this case is to answer, in the practitioner's words. */
  question: text,
  /** Referral: to whom. */
  addressee: line,
  urgency: z.enum(['emergency', 'urgent', 'soon', 'routine']).nullable(),
  urgencyReason: text,
  note: text,
  /** True for invented data. Printed on every page made from it. */
  isInvented: z.boolean(),
  archivedOn: day.nullable(),
  /** Profession and registration. */
  practitionerRole: line,
  /** How whoever reads the report reaches the practitioner. */
  practitionerContact: line,
  copiesTo: line,
  /** Treatment to date: what, how much, kept to or not, with what result. */
  triedSoFar: text,
  /** What the complaint keeps the athlete from, and by when it matters. */
  effects: text,
  /** What the athlete was told and wants, and what to watch for. */
  toldAndWanted: text,
  /** Agreement that this letter is sent. Null: not asked. */
  consentToReferral: z.boolean().nullable(),
  consentToReferralOn: day.nullable(),
});
export type CaseRecord = z.infer<typeof caseRecord>;
