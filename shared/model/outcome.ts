import { z } from 'zod';
import { finite, id, instant, line, sha256, text } from './parts.ts';

/** What the practitioner did with one finding. Keeps how the finding read then, so that a later change is noticed. */
export const findingDecision = z.strictObject({
  id,
  caseId: id,
  /** Stable key of the finding: rule, trial, phase, side. */
  findingKey: line,
  decision: z.enum(['accepted', 'reworded', 'set-aside']),
  wording: text,
  reason: text,
  /** The outcome and text decided on. */
  decidedOutcome: line,
  decidedText: text,
});
export type FindingDecision = z.infer<typeof findingDecision>;

export const REPORT_KINDS = ['client', 'study', 'referral'] as const;
export const PAPERS = ['a4', 'letter'] as const;

/** A report that was made: kept, never changed. The pages are in the media store. */
export const reportRecord = z.strictObject({
  id,
  caseId: id,
  kind: z.enum(REPORT_KINDS),
  paper: z.enum(PAPERS),
  madeAt: instant,
  pdfSha256: sha256,
  /** SHA-256 of the case data it was made from. */
  caseSha256: sha256,
  appVersion: line,
  kernelVersion: line,
  rulesVersion: line,
  pageCount: z.int().min(1),
  /** A final report stands as it is: a later change to the case makes another one. */
  isFinal: z.boolean(),
  /** Whether what names the athlete was taken out. */
  isDeidentified: z.boolean(),
  /** Whether the case data are attached inside the file. */
  holdsCase: z.boolean(),
  /** The final report of the same kind that this one takes the place of. */
  replacesId: id.nullable(),
  /** What changed in the case since that one, a sentence a line. */
  changes: text,
});
export type ReportRecord = z.infer<typeof reportRecord>;

/** A file in the media store. */
export const mediaRecord = z.strictObject({
  id,
  caseId: id,
  sha256,
  fileName: line,
  mediaType: line,
  sizeBytes: finite.min(0),
  /**
   * The film, by its SHA-256, whose pictures this file shows in a form every window can: picture for picture, at the
   * same times. Null: a file brought in or made for itself.
   */
  proxyOf: sha256.nullable(),
});
export type MediaRecord = z.infer<typeof mediaRecord>;
