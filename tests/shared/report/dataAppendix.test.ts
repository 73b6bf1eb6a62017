import { createHash } from 'node:crypto';
import { parse } from 'csv-parse/sync';
import { expect, test } from 'vitest';
import { makeReport, requestFor } from '../../../main/report/makeReport.ts';
import { pointsCsv } from '../../../shared/exchange/pointsCsv.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import type { Block } from '../../../shared/report/blocks/block.ts';
import { DATA_KINDS, dataOf, typedFields } from '../../../shared/report/caseData.ts';
import { composeReport } from '../../../shared/report/compose.ts';
import { POINTS_FILE } from '../../../shared/report/parts/dataAppendix.ts';
import { textOf } from '../../../shared/report/runs.ts';
import { SAMPLE_CREATED_AT, sampleCase } from '../../support/sampleCase.ts';

const asked = { kind: 'study', paper: 'a4' } as const;

/** Two points through 200 frames; the name of one holds a comma. */
function withPoints(): CaseFile {
  const file = sampleCase();
  const trialId = file.movementTrials[0]?.id ?? '';
  const track = (id: string, point: string) => ({
    id,
    trialId,
    point,
    origin: 'by-hand' as const,
    samples: Array.from({ length: 200 }, (_, i): [number, number, number] => [i, 100 + i / 8, 300 - i / 4]),
    uPx: 0.7,
  });
  const ids = ['00000000-0000-4000-8000-000000000901', '00000000-0000-4000-8000-000000000902'] as const;
  return { ...file, landmarkTracks: [track(ids[0], 'wrist-left'), track(ids[1], 'own, point')] };
}

/** The appendix as text. */
function appendix(file: CaseFile): string {
  const { blocks } = composeReport(requestFor(file, SAMPLE_CREATED_AT, asked));
  const from = blocks.findIndex((block) => block.block === 'heading' && block.text === 'Data as entered');
  const to = blocks.findIndex((block) => block.block === 'heading' && block.text === 'Working');
  return blocks.slice(from, to).map(wordsOf).join('\n');
}

function wordsOf(block: Block): string {
  if (block.block === 'table')
    return [block.caption, ...block.rows.map((row) => row.map(textOf).join(' | '))].join('\n');
  return block.block === 'paragraph' ? textOf(block.runs) : '';
}

test('law: every number that was entered stands there to six digits in the unit of its field or of its item, every text whole', () => {
  const file = sampleCase();
  const text = appendix(file);
  const printed = (text.match(/[−\d][\d.]*/g) ?? []).map((one) => Number(one.replace('−', '-')));
  const stands = (value: number) =>
    [1, 100, 1000, 180 / Math.PI].some((per) =>
      printed.some((one) => Math.abs(one - value * per) <= Math.abs(value * per) * 5e-6 + 1e-12),
    );
  let seen = 0;
  for (const kind of DATA_KINDS) {
    if (['landmarkTrack', 'pointRepeat', 'ownMovement', 'ownRule', 'findingDecision'].includes(kind)) continue;
    for (const record of dataOf(file, kind)) {
      for (const [field, value] of Object.entries(record)) {
        const numbers = [value].flat().filter((one) => typeof one === 'number');
        for (const one of numbers) expect([kind, field, one, stands(one)]).toEqual([kind, field, one, true]);
        if (typeof value === 'string' && typedFields(kind).includes(field))
          expect(text).toContain(value.replace(/\.$/, ''));
        if (typeof value === 'number' || typeof value === 'string') seen += 1;
      }
    }
  }
  expect(seen).toBeGreaterThan(100);
});

test('RFC 4180, read by another library: the attached points are all points, under the SHA-256 that is printed; the pages sum them up', async () => {
  const file = withPoints();
  const csv = pointsCsv(file);
  const rows = parse<Record<string, string>>(csv, { columns: true });
  const samples = file.landmarkTracks.flatMap((track) => track.samples.map((sample) => [track.point, ...sample]));
  expect(samples.length).toBe(400);
  expect(rows.map(({ point, frame, x, y }) => [point, Number(frame), Number(x), Number(y)])).toEqual(samples);
  const text = appendix(file);
  expect(text).toContain(createHash('sha256').update(csv).digest('hex'));
  expect(text.split('\n').length).toBeLessThan(file.landmarkTracks.length + 120);
  const { bytes } = await makeReport(file, SAMPLE_CREATED_AT, { ...asked, attachCase: true });
  expect(Buffer.from(bytes).toString('latin1')).toContain(POINTS_FILE);
});

test('a case without points has no such table and no such file', async () => {
  const file = sampleCase();
  expect(file.landmarkTracks).toEqual([]);
  expect(appendix(file)).not.toContain(POINTS_FILE);
  const { bytes } = await makeReport(file, SAMPLE_CREATED_AT, { ...asked, attachCase: true });
  expect(Buffer.from(bytes).toString('latin1')).not.toContain(POINTS_FILE);
});
