import type { Assessment } from '../assess/assessment.ts';
import type { CaseFile } from '../model/records.ts';
import { APP_VERSION } from '../versions.ts';
import type { Block } from './blocks/block.ts';
import { composeClient } from './kinds/client.ts';
import { composeReferral } from './kinds/referral.ts';
import { composeStudy } from './kinds/study.ts';
import type { FontMetrics } from './metrics.ts';
import type { PlacedReport } from './page.ts';
import { runningFurniture } from './parts/furniture.ts';
import { prepare, type Writing } from './parts/writing.ts';
import { dotted } from './runs.ts';
import { type Paper, sheetFor } from './sheet.ts';
import { measure } from './steps/measure.ts';
import { paginate } from './steps/paginate.ts';
import { place } from './steps/place.ts';
import { redactBlocks, type Redaction, redactionFor } from './steps/redact.ts';

export type ReportKind = 'client' | 'study' | 'referral';

export interface ReportRequest {
  readonly file: CaseFile;
  readonly assessment: Assessment;
  readonly kind: ReportKind;
  readonly paper: Paper;
  readonly metrics: FontMetrics;
  /** Instant printed and written into the file; decided by the caller, kept with the report. */
  readonly createdAt: string;
  readonly caseSha256: string;
  /** Takes the athlete's name out of everything printed. A study is de-identified unless told otherwise. */
  readonly deidentify?: boolean;
}

/**
 * A report from a case, each step pure: compose says what is told, with a name taken out where asked, measure how tall
 * it is, paginate where pages end, place where each mark stands.
 */
export function placeReport(request: ReportRequest): PlacedReport {
  const { file, assessment, paper, metrics, createdAt, caseSha256 } = request;
  const { title, kindWords, blocks, draft, redact } = composeReport(request);
  const sheet = sheetFor(paper);
  const strips = measure(blocks, { width: sheet.room.width, metrics, id: 'b' });
  const plans = paginate(strips, sheet.room.height);
  const remarks = [...(draft ? ['DRAFT, not signed'] : []), ...(file.case.isInvented ? ['invented data'] : [])];
  const furniture = runningFurniture(sheet, redact(dotted(`Case ${file.case.number}`, kindWords, ...remarks)), draft);
  return {
    title,
    language: 'en-GB',
    author: redact(file.case.practitioner),
    subject: redact(`${kindWords}, case ${file.case.number}`),
    keywords: `Caseframe ${APP_VERSION}, kernel ${assessment.kernelVersion}, rules ${assessment.rulesVersion}, case SHA-256 ${caseSha256}`,
    createdAt,
    pages: place(strips, plans, sheet, metrics, furniture),
  };
}

/** What a report tells, in order, before anything is laid out. */
export function composeReport({
  file,
  assessment,
  kind,
  createdAt,
  caseSha256,
  deidentify,
}: ReportRequest): Required<Composition> & {
  readonly redact: Redaction;
} {
  const redact = (deidentify ?? kind === 'study') ? redactionFor(file.athlete) : asItStands;
  const writing = prepare({ file, assessment, createdAt, caseSha256 }, kind === 'study');
  const { title, kindWords, blocks, draft = false } = KINDS[kind](writing);
  return { title: redact(title), kindWords, blocks: redactBlocks(blocks, redact), draft, redact };
}

const asItStands: Redaction = (text) => text;

/** What one kind of report says. */
export interface Composition {
  readonly title: string;
  readonly kindWords: string;
  readonly blocks: readonly Block[];
  /** Marked as a draft on every page. */
  readonly draft?: boolean;
}

const KINDS: Readonly<Record<ReportKind, (writing: Writing) => Composition>> = {
  client: composeClient,
  study: composeStudy,
  referral: composeReferral,
};
