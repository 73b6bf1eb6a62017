import { createHash } from 'node:crypto';
import { assessCase } from '../../shared/assess/assessCase.ts';
import { canonicalJson } from '../../shared/canonicalJson.ts';
import { pointsCsv } from '../../shared/exchange/pointsCsv.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import { type CaseData, caseData, withoutNames } from '../../shared/report/caseData.ts';
import { isWithoutNames, placeReport, type ReportKind, type ReportRequest } from '../../shared/report/compose.ts';
import { type Evidence, NO_EVIDENCE } from '../../shared/report/evidence.ts';
import type { PlacedReport } from '../../shared/report/page.ts';
import type { Paper } from '../../shared/report/sheet.ts';
import { POINTS_FILE } from '../../shared/report/parts/dataAppendix.ts';
import { redactionFor } from '../../shared/report/steps/redact.ts';
import { type Attached, drawPdf } from './drawPdf.ts';
import { loadFontMetrics } from './fontMetrics.ts';

export interface ReportOptions {
  readonly kind: ReportKind;
  readonly paper: Paper;
  /** A study is without names unless told otherwise, the others have them. */
  readonly deidentify?: boolean | undefined;
  readonly isFinal?: boolean | undefined;
  /** Puts the case data into the PDF as an attached file. */
  readonly attachCase?: boolean | undefined;
  /** Force records and stills, see `loadEvidence`; none: they are left out. */
  readonly evidence?: Evidence;
  /** What the final report before this one was made from; null: there is none. */
  readonly replaced?: Replaced | null;
  /** Told after each page that is drawn. */
  readonly onPart?: ((done: number, of: number) => void) | undefined;
}

export interface Replaced {
  readonly madeAt: string;
  readonly data: CaseData;
}

export interface MadeReport {
  readonly bytes: Uint8Array;
  readonly report: PlacedReport;
  readonly caseSha256: string;
}

/**
 * A report of one case as the bytes of a PDF.
 * @param createdAt the instant of the last edit, never of the making: the same case gives the same bytes on any day
 */
export async function makeReport(file: CaseFile, createdAt: string, options: ReportOptions): Promise<MadeReport> {
  const request = requestFor(file, createdAt, options);
  const report = placeReport(request);
  const attached = options.attachCase === true ? attachedData(file, createdAt, request) : [];
  return {
    bytes: await drawPdf(report, { attached, images: request.evidence?.images ?? {}, onPage: options.onPart }),
    report,
    caseSha256: request.caseSha256,
  };
}

/** What composing needs to know, from what was asked for. */
export function requestFor(file: CaseFile, createdAt: string, options: ReportOptions): ReportRequest {
  const points = pointsCsv(shownData(file, options));
  return {
    file,
    assessment: assessCase(file),
    kind: options.kind,
    paper: options.paper,
    metrics: loadFontMetrics(),
    createdAt,
    caseSha256: sha256Of(caseJson(file)),
    pointsSha256: points === '' ? null : sha256Of(points),
    ...(options.deidentify === undefined ? {} : { deidentify: options.deidentify }),
    isFinal: options.isFinal ?? false,
    replaced: options.replaced ?? null,
    evidence: options.evidence ?? NO_EVIDENCE,
  };
}

/** The case data as text: its SHA-256 is the one that reports name. */
export function caseJson(file: CaseFile): string {
  return canonicalJson(caseData(file));
}

function sha256Of(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}

/** The case data as this report may show them. */
function shownData(file: CaseFile, options: Pick<ReportOptions, 'deidentify' | 'kind'>): CaseData {
  const data = caseData(file);
  return isWithoutNames(options) ? withoutNames(data, redactionFor(file.athlete)) : data;
}

function attachedData(file: CaseFile, createdAt: string, request: ReportRequest): Attached[] {
  const data = shownData(file, request);
  const points = pointsCsv(data);
  const attach = (name: string, description: string, mediaType: string, text: string): Attached => ({
    name,
    description,
    mediaType,
    bytes: new TextEncoder().encode(text),
    at: createdAt,
  });
  return [
    attach('case-data.json', 'The case this report was made from, as data', 'application/json', canonicalJson(data)),
    ...(points === '' ? [] : [attach(POINTS_FILE, 'All digitised points, a row each', 'text/csv', points)]),
  ];
}
