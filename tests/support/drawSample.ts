import { createHash } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import { drawPdf } from '../../main/report/drawPdf.ts';
import { loadFontMetrics } from '../../main/report/fontMetrics.ts';
import { placeReport, type ReportKind } from '../../shared/report/compose.ts';
import { SAMPLE_CREATED_AT, SAMPLE_SHA256, sampleAssessment, sampleCase } from './sampleCase.ts';

/** Draws the sample case's report of one kind into a file and prints its SHA-256; run in a process of its own. */
const [kind = 'client', path = ''] = process.argv.slice(2);
const report = placeReport({
  file: sampleCase(),
  assessment: sampleAssessment(),
  kind: kind as ReportKind,
  paper: 'a4',
  metrics: loadFontMetrics(),
  createdAt: SAMPLE_CREATED_AT,
  caseSha256: SAMPLE_SHA256,
});
const bytes = await drawPdf(report);
if (path !== '') writeFileSync(path, bytes);
process.stdout.write(createHash('sha256').update(bytes).digest('hex'));
