import { createHash } from 'node:crypto';
import { assessCase } from '../../shared/assess/assessCase.ts';
import { canonicalJson } from '../../shared/canonicalJson.ts';
import type { Request } from '../../shared/contract/channels.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import { placeReport } from '../../shared/report/compose.ts';
import type { PlacedReport } from '../../shared/report/page.ts';
import { APP_VERSION, KERNEL_VERSION, RULES_VERSION } from '../../shared/versions.ts';
import { drawPdf } from '../report/drawPdf.ts';
import { loadFontMetrics } from '../report/fontMetrics.ts';
import type { Context, Handlers } from './context.ts';
import { judged } from './judged.ts';
import { keepFile } from './keepFile.ts';

export const reportHandlers: Handlers<'report.preview' | 'report.make'> = {
  'report.preview': async (context, request) => ({ report: (await compose(context, request)).json }),
  'report.make': async (context, request) => {
    const { caseId, kind, paper } = request;
    const { file, report, caseSha256 } = await compose(context, request);
    const bytes = await drawPdf(report);
    const fileName = `${file.case.number || 'case'}-${kind}.pdf`.replaceAll(/[^\w.-]+/g, '-');
    const kept = await keepFile(context, caseId, { fileName, mediaType: 'application/pdf', bytes });
    const reportId = context.newId();
    const record = {
      id: reportId,
      caseId,
      kind,
      paper,
      madeAt: context.now(),
      pdfSha256: kept.sha256,
      caseSha256,
      appVersion: APP_VERSION,
      kernelVersion: KERNEL_VERSION,
      rulesVersion: RULES_VERSION,
      pageCount: report.pages.length,
    };
    const edits = await context.store.apply(
      caseId,
      [kept.edit, { op: 'create', kind: 'report', record }],
      record.madeAt,
    );
    await judged(context, caseId);
    return { reportId, pdfSha256: kept.sha256, href: `/files/${kept.sha256}/${fileName}`, edits };
  },
};

type Json = Awaited<ReturnType<(typeof reportHandlers)['report.preview']>>['report'];

async function compose({ store }: Context, { caseId, kind, paper }: Request<'report.preview'>) {
  const file = await store.open(caseId);
  const caseSha256 = createHash('sha256')
    .update(canonicalJson(caseData(file)))
    .digest('hex');
  const report: PlacedReport = placeReport({
    file,
    assessment: assessCase(file),
    kind,
    paper,
    metrics: loadFontMetrics(),
    // The instant of the last edit, not of the making: the same case gives the same bytes on any day.
    createdAt: await store.lastEditAt(caseId),
    caseSha256,
  });
  return { file, report, caseSha256, json: report as unknown as Json };
}

/** What a report is made from: all of the case but the reports already made of it, their files and the count of edits. */
function caseData({ reports: _made, media: _files, revision: _count, ...data }: CaseFile) {
  return data;
}
