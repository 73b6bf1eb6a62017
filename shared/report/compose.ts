import type { Assessment } from '../assess/assessment.ts';
import type { CaseFile } from '../model/records.ts';
import { APP_VERSION } from '../versions.ts';
import type { Block } from './blocks/block.ts';
import { type CaseData, caseData, redactTyped } from './caseData.ts';
import { composeClient } from './kinds/client.ts';
import { composeReferral } from './kinds/referral.ts';
import { composeStudy } from './kinds/study.ts';
import { type Evidence, NO_EVIDENCE } from './evidence.ts';
import type { FontMetrics } from './metrics.ts';
import type { PlacedReport } from './page.ts';
import { runningFurniture } from './parts/furniture.ts';
import { prepare, type Writing } from './parts/writing.ts';
import { dotted } from './runs.ts';
import { type Paper, sheetFor } from './sheet.ts';
import { measure } from './steps/measure.ts';
import { paginate } from './steps/paginate.ts';
import { place } from './steps/place.ts';
import { whatChanged } from './whatChanged.ts';
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
  /** SHA-256 of all digitised points as `pointsCsv` writes them; null: there are none, or it was not asked for. */
  readonly pointsSha256?: string | null;
  /** Takes the athlete's name out of everything printed. A study is de-identified unless told otherwise. */
  readonly deidentify?: boolean;
  /** Force records and stills; none are drawn where they are not given. */
  readonly evidence?: Evidence;
  /** Not a draft any more. */
  readonly isFinal?: boolean;
  /** The final report before this one and what it was made from; null: none. */
  readonly replaced?: { readonly madeAt: string; readonly data: CaseData } | null;
  /** Told after each paragraph, table or figure that is laid out or written. */
  readonly onBlock?: ((done: number, of: number) => void) | undefined;
}

/** A study is de-identified unless told otherwise. */
export function isWithoutNames({
  deidentify,
  kind,
}: {
  readonly deidentify?: boolean | undefined;
  readonly kind: ReportKind;
}): boolean {
  return deidentify ?? kind === 'study';
}

/**
 * A report from a case, each step pure: compose says what is told, with a name taken out where asked, measure how tall
 * it is, paginate where pages end, place where each mark stands.
 */
export function placeReport(request: ReportRequest): PlacedReport {
  const { file, assessment, paper, metrics, createdAt, caseSha256 } = request;
  const composed = composeReport(request);
  const { title, kindWords, blocks, draft, redact } = composed;
  const sheet = sheetFor(paper);
  const strips = measure(blocks, { width: sheet.room.width, metrics, id: 'b' }, request.onBlock);
  const plans = paginate(strips, sheet.room.height);
  const furniture = runningFurniture(sheet, runningWords(request, composed), draft);
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

/** At the head of every page. */
export function runningWords(
  { file }: ReportRequest,
  { kindWords, draft, redact }: Pick<Required<Composition>, 'kindWords' | 'draft'> & { readonly redact: Redaction },
): string {
  const remarks = [draft ? 'DRAFT' : null, file.case.isInvented ? 'invented data' : null];
  return redact(dotted(`Case ${file.case.number}`, kindWords, ...remarks));
}

/** What a report tells, in order, before anything is laid out. */
export function composeReport(request: ReportRequest): Required<Composition> & {
  readonly redact: Redaction;
} {
  const { assessment, kind, createdAt, caseSha256, isFinal = false, replaced = null } = request;
  const hidden = isWithoutNames(request);
  const redact = hidden ? redactionFor(request.file.athlete) : asItStands;
  // Before composing, so that lists and figures are laid out with what stands for the name; after it once more, since
  // the judgement quotes the records too.
  const file = redactTyped(request.file, redact);
  const changes =
    replaced === null ? null : { madeAt: replaced.madeAt, words: whatChanged(replaced.data, caseData(request.file)) };
  const writing = prepare(
    {
      file,
      assessment,
      createdAt,
      caseSha256,
      isFinal,
      isWithoutNames: hidden,
      changes,
      evidence: request.evidence ?? NO_EVIDENCE,
      pointsSha256: request.pointsSha256 ?? null,
    },
    kind === 'study',
  );
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
