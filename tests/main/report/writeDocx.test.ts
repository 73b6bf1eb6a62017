import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createCanvas, loadImage } from '@napi-rs/canvas';
import { beforeAll, describe, expect, test } from 'vitest';
import { requestFor } from '../../../main/report/makeReport.ts';
import { setZipDates } from '../../../main/report/setZipDates.ts';
import { writeDocx } from '../../../main/report/writeDocx.ts';
import { composeReport } from '../../../shared/report/compose.ts';
import { SAMPLE_CREATED_AT, sampleCase } from '../../support/sampleCase.ts';

const path = join(mkdtempSync(join(tmpdir(), 'caseframe-docx-')), 'study.docx');
const request = requestFor(sampleCase(), SAMPLE_CREATED_AT, { kind: 'study', paper: 'a4' });
let bytes: Uint8Array;
beforeAll(async () => {
  bytes = await writeDocx(request);
  writeFileSync(path, bytes);
});

test('same request, same bytes, though the clock has moved on', async () => {
  await new Promise((resolve) => setTimeout(resolve, 2100));
  expect(Buffer.compare(await writeDocx(request), bytes)).toBe(0);
});

const entry = (name: string): string => execFileSync('unzip', ['-p', path, name], { encoding: 'utf8' });
/** Widths in twentieths of a point, in order. */
const numbers = (xml: string, tag: string) =>
  [...xml.matchAll(new RegExp(`<w:${tag} [^>]*w:w="(\\d+)"`, 'g'))].map(([, w]) => Number(w));
const hasUnzip = spawnSync('unzip', ['-v']).error === undefined;
describe.skipIf(!hasUnzip)('unzip, a general-purpose program', () => {
  test('finds the archive sound, every entry dated as the report', () => {
    expect(execFileSync('unzip', ['-t', path], { encoding: 'utf8' })).toContain('No errors detected');
    const day = SAMPLE_CREATED_AT.slice(0, 10);
    const dates = execFileSync('unzip', ['-l', path], { encoding: 'utf8' }).match(/\d{4}-\d\d-\d\d/g) ?? [];
    expect(new Set(dates)).toEqual(new Set([day]));
  });

  test('ISO/IEC 15948, by another decoder: beside every vector figure lies a picture of it, on white, with ink in it', async () => {
    const names = execFileSync('unzip', ['-Z1', path], { encoding: 'utf8' }).match(/word\/media\/.*\.png/g) ?? [];
    expect(names.length).toBe((entry('word/document.xml').match(/<wp:inline/g) ?? []).length);
    for (const name of names) {
      const picture = await loadImage(execFileSync('unzip', ['-p', path, name]));
      const canvas = createCanvas(picture.width, picture.height);
      canvas.getContext('2d').drawImage(picture, 0, 0);
      const { data } = canvas.getContext('2d').getImageData(0, 0, picture.width, picture.height);
      const dark = Array.from({ length: data.length / 4 }, (_, i) => (data[4 * i] ?? 0) < 100).filter(Boolean).length;
      expect(dark).toBeGreaterThan(100);
      expect(dark).toBeLessThan(data.length / 8);
    }
  });

  test('ECMA-376, 17.4.48 and 17.18.87: each table has a fixed grid over the whole width, wide where its words are long, and every cell keeps to it', () => {
    const tables = entry('word/document.xml').match(/<w:tbl>[\s\S]*?<\/w:tbl>/g) ?? [];
    const shapes = composeReport(request).blocks.flatMap((block) => (block.block === 'table' ? [block] : []));
    expect(tables).toHaveLength(shapes.length);
    tables.forEach((xml, t) => {
      const grid = numbers(xml, 'gridCol');
      const { columns, rows } = shapes[t] ?? { columns: [], rows: [] };
      expect(grid).toHaveLength(columns.length);
      expect(xml).toContain('w:type="fixed"');
      // A4 less two margins of 58 points, in twentieths; rounding is half of one a column.
      expect(Math.abs(grid.reduce((sum, one) => sum + one, 0) - 20 * (595.28 - 2 * 58))).toBeLessThan(columns.length);
      expect(numbers(xml, 'tcW')).toEqual(Array.from({ length: rows.length + 1 }, () => grid).flat());
      const rights = columns.filter(({ align }) => align === 'right').length * (rows.length + 1);
      expect(xml.match(/<w:jc w:val="(right|end)"/g) ?? []).toHaveLength(rights);
    });
    // Where all were of one width, a side's column was as wide as that of a test's name.
    const screening = tables[shapes.findIndex(({ columns }) => columns[1]?.head === 'Side')] ?? '';
    const [name = 0, side = 0] = numbers(screening, 'gridCol');
    expect(name).toBeGreaterThan(1.8 * side);
  });

  test('ECMA-376, 17.3.1.33: line heights grow with what stands in a line, so that no figure or fraction is cut off', () => {
    expect(entry('word/styles.xml')).toMatch(/<w:spacing [^>]*w:lineRule="auto"/);
  });

  test('ECMA-376, 17.3.2.30: words of Hebrew are runs from right to left, those beside them are not', async () => {
    const file = sampleCase();
    const rtl = requestFor({ ...file, case: { ...file.case, question: 'Can דנה כהן throw?' } }, SAMPLE_CREATED_AT, {
      kind: 'study',
      paper: 'a4',
    });
    writeFileSync(path.replace('study', 'rtl'), await writeDocx(rtl));
    const xml = execFileSync('unzip', ['-p', path.replace('study', 'rtl'), 'word/document.xml'], { encoding: 'utf8' });
    const runs = xml.match(/<w:r>.*?<\/w:r>/g) ?? [];
    expect(
      runs.filter((run) => run.includes('<w:rtl/>')).map((run) => run.replaceAll(/<[^>]*>/g, '').trim()),
    ).toContain('דנה כהן');
    expect(runs.filter((run) => /Can |throw/.test(run)).every((run) => !run.includes('<w:rtl/>'))).toBe(true);
  });

  test('ECMA-376: headings, table heads, equations and figures with words are what they are, and no paragraph is lost', () => {
    const xml = entry('word/document.xml');
    const { blocks } = composeReport(request);
    const headings = blocks.flatMap((block) => (block.block === 'heading' ? [block] : []));
    expect(xml.match(/w:pStyle w:val="Heading\d"/g)).toHaveLength(headings.length);
    expect(xml.match(/<w:tblHeader/g)?.length).toBe(xml.match(/<w:tbl>/g)?.length);
    expect(xml).toContain('<m:f>');
    const described = [...xml.matchAll(/<wp:docPr [^>]*descr="([^"]*)"/g)].map(([, words = '']) => words);
    expect(described.length).toBeGreaterThan(3);
    for (const words of described) expect(words.length).toBeGreaterThan(10);
    const text = xml
      .replace(/<[^>]+>/g, '')
      .replaceAll('&amp;', '&')
      .replaceAll('&lt;', '<')
      .replaceAll('&gt;', '>');
    for (const block of blocks) {
      if (block.block === 'paragraph')
        for (const run of block.runs) for (const line of run.text.split('\n')) expect(text).toContain(line);
    }
    expect(entry('docProps/core.xml')).toContain(SAMPLE_CREATED_AT.slice(0, 19));
  });
});

test('only the dates of an archive change (APPNOTE of the ZIP format, 4.4.6: minutes and days in two words)', () => {
  const later = setZipDates(bytes, '2031-02-03T04:05:06.000Z');
  expect(later).toHaveLength(bytes.length);
  const at = new DataView(later.buffer);
  expect([at.getUint16(10, true), at.getUint16(12, true)]).toEqual([
    (4 << 11) | (5 << 5) | 3,
    (51 << 9) | (2 << 5) | 3,
  ]);
  expect(Buffer.compare(setZipDates(later, SAMPLE_CREATED_AT), bytes)).toBe(0);
});
