import { DomainError } from '../../shared/errors.ts';
import type { Request } from '../../shared/contract/channels.ts';
import type { ReportRecord } from '../../shared/model/outcome.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import { rulesVersionOf } from '../../shared/rules/ownRules.ts';
import { referralEssentials } from '../../shared/report/beforeYouSend.ts';
import { caseData, type CaseData } from '../../shared/report/caseData.ts';
import { isWithoutNames } from '../../shared/report/compose.ts';
import { whatChanged } from '../../shared/report/whatChanged.ts';
import { APP_VERSION, KERNEL_VERSION } from '../../shared/versions.ts';
import { loadEvidence } from '../report/loadEvidence.ts';
import { type As, type MadeAs, makeInThread, type ReportBytes } from '../report/makeInThread.ts';
import { caseJson, type Replaced, type ReportOptions } from '../report/makeReport.ts';
import type { Context, Handlers } from './context.ts';
import { judged } from './judged.ts';
import { keepFile } from './keepFile.ts';

export const reportHandlers: Handlers<'report.preview' | 'report.make' | 'report.cancel' | 'report.text'> = {
  'report.preview': (context, request) =>
    asJob('pages', request.jobId, async (signal) => {
      const { file, createdAt, given } = await openFor(context, request);
      const report = await making(context, 'pages', request, { file, createdAt, ...given }, signal);
      // Placed pages are JSON: numbers, texts and lists.
      return { report: report as unknown as Json };
    }),
  'report.text': (context, request) =>
    asJob(request.as, request.jobId, async (signal) => {
      const { file, createdAt, given } = await openFor(context, request);
      const base = fileBase(file, request.kind);
      if (request.as === 'docx') {
        const bytes = await making(context, 'docx', request, { file, createdAt, ...given }, signal);
        return { files: [{ name: `${base}.docx`, mediaType: DOCX, base64: Buffer.from(bytes).toString('base64') }] };
      }
      const { markdown, figures } = await making(context, 'md', request, { file, createdAt, ...given }, signal);
      const texts = [
        { name: `${base}.md`, mediaType: 'text/markdown', text: markdown },
        ...figures.map(({ fileName, svg }) => ({ name: `figures/${fileName}`, mediaType: 'image/svg+xml', text: svg })),
      ];
      return {
        files: texts.map(({ text, ...one }) => ({ ...one, base64: Buffer.from(text, 'utf8').toString('base64') })),
      };
    }),
  'report.make': async (context, request) => {
    const { file, given, made } = await asJob('pdf', request.jobId, async (signal) => {
      const opened = await context.inTurn(() => openFor(context, request));
      refuseUnfinished(opened.file, request);
      const { createdAt } = opened;
      const job = { file: opened.file, createdAt, ...opened.given };
      return { ...opened, made: await making(context, 'pdf', request, job, signal) };
    });
    return context.inTurn(() => keepReport(context, request, file, given.replaced, made));
  },
  'report.cancel': async (_context, { jobId }) => {
    underWay.get(jobId)?.abort();
    return {};
  },
};

/** Reports under way that someone may stop. */
const underWay = new Map<string, AbortController>();

/**
 * Work that may be stopped under the id of its job, where it has one, from the moment it is asked for: pages asked for
 * later take the place of those asked for before, whichever case is read sooner.
 */
async function asJob<T>(
  as: As,
  jobId: string | undefined,
  work: (signal: AbortSignal | undefined) => Promise<T>,
): Promise<T> {
  if (jobId === undefined) return work(undefined);
  const before = underWay.get(jobId);
  if (before !== undefined && as !== 'pages')
    throw new DomainError('conflict', 'A report is being made under this id already.');
  // Pages that something else was chosen over are waited for by nobody.
  before?.abort();
  const stop = new AbortController();
  underWay.set(jobId, stop);
  try {
    return await work(stop.signal);
  } finally {
    if (underWay.get(jobId) === stop) underWay.delete(jobId);
  }
}

/** Makes a report beside all else, heard of under the id of its job, where it has one. */
async function making<A extends As>(
  { emit }: Context,
  as: A,
  {
    jobId,
    kind,
    paper,
    deidentify,
    isFinal,
    attachCase,
  }: Request<'report.preview'> & { attachCase?: boolean | undefined },
  { file, createdAt, ...given }: { readonly file: CaseFile; readonly createdAt: string } & Partial<ReportOptions>,
  signal: AbortSignal | undefined,
): Promise<MadeAs[A]> {
  const job = { file, createdAt, options: { kind, paper, deidentify, isFinal, attachCase, ...given } };
  if (jobId === undefined) return makeInThread(as, job);
  return makeInThread(as, job, { signal, onPart: (done, of) => emit('report.progress', { jobId, done, of }) });
}

async function keepReport(
  context: Context,
  { caseId, kind, paper, isFinal = false, attachCase = false, deidentify }: Request<'report.make'>,
  file: CaseFile,
  replaced: (Replaced & { readonly id: string }) | null,
  made: ReportBytes,
) {
  const fileName = `${fileBase(file, kind)}.pdf`;
  const kept = await keepFile(context, caseId, { fileName, mediaType: 'application/pdf', bytes: made.bytes });
  // Under the SHA-256 that the report names: so that the next final report can say what changed.
  const data = {
    fileName: 'case-data.json',
    mediaType: 'application/json',
    bytes: Buffer.from(caseJson(file), 'utf8'),
  };
  const keptData = isFinal ? [await keepFile(context, caseId, data)] : [];
  const reportId = context.newId();
  const record: ReportRecord = {
    id: reportId,
    caseId,
    kind,
    paper,
    madeAt: context.now(),
    pdfSha256: kept.sha256,
    caseSha256: made.caseSha256,
    appVersion: APP_VERSION,
    kernelVersion: KERNEL_VERSION,
    rulesVersion: rulesVersionOf(file),
    pageCount: made.pageCount,
    isFinal,
    isDeidentified: isWithoutNames({ deidentify, kind }),
    holdsCase: attachCase,
    replacesId: replaced?.id ?? null,
    changes: replaced === null ? '' : whatChanged(replaced.data, caseData(file)).join('\n'),
  };
  const edits = await context.store.apply(
    caseId,
    [kept.edit, ...keptData.map(({ edit }) => edit), { op: 'create', kind: 'report', record }],
    record.madeAt,
  );
  await judged(context, caseId);
  return { reportId, pdfSha256: kept.sha256, href: `/files/${kept.sha256}/${fileName}`, edits };
}

type Json = Awaited<ReturnType<(typeof reportHandlers)['report.preview']>>['report'];

const DOCX = 'application/vnd.openxmlformats-officedocument.wordprocessingml.document';

async function openFor(context: Context, request: Request<'report.preview'>) {
  const file = await context.store.open(request.caseId);
  return {
    file,
    // The instant of the last edit, not of the making: the same case gives the same bytes on any day.
    createdAt: await context.store.lastEditAt(request.caseId),
    given: {
      replaced: request.isFinal === true ? await lastFinal(context, file, request) : null,
      evidence: await loadEvidence(context.media, file),
    },
  };
}

/** The last final report of the kind that was made from other case data than today's; null: none. */
async function lastFinal(
  { media }: Context,
  file: CaseFile,
  { kind }: Request<'report.preview'>,
): Promise<(Replaced & { readonly id: string }) | null> {
  const now = caseJson(file);
  for (const earlier of file.reports.toReversed()) {
    if (!earlier.isFinal || earlier.kind !== kind) continue;
    const text = new TextDecoder().decode(await media.read(earlier.caseSha256));
    // Written by this program and held by its SHA-256.
    if (text !== now) return { id: earlier.id, madeAt: earlier.madeAt, data: JSON.parse(text) as CaseData };
  }
  return null;
}

function refuseUnfinished(file: CaseFile, { kind, isFinal }: Request<'report.preview'>): void {
  const missing = isFinal === true && kind === 'referral' ? referralEssentials(file) : [];
  if (missing.length === 0) return;
  throw new DomainError(
    'input-missing',
    `A letter cannot be called final yet. Missing: ${missing.join(' ')} It can be saved as a draft.`,
  );
}

function fileBase(file: CaseFile, kind: string): string {
  return `${file.case.number || 'case'}-${kind}`.replaceAll(/[^\w.-]+/g, '-');
}
