import { execFileSync, spawnSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { inflateRawSync, inflateSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ask } from '../../../main/cli/ask.ts';
import { invent } from '../../../main/demo/demoStore.ts';
import { loadFontMetrics } from '../../../main/report/fontMetrics.ts';
import { makeReport, requestFor } from '../../../main/report/makeReport.ts';
import { MOST_GRADE, readingGrade, sentencesIn } from '../../../shared/knowledge/wording/readingGrade.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import type { Block } from '../../../shared/report/blocks/block.ts';
import { referralEssentials } from '../../../shared/report/beforeYouSend.ts';
import { composeReport, placeReport } from '../../../shared/report/compose.ts';
import { textOf } from '../../../shared/report/runs.ts';
import { writeMarkdown } from '../../../shared/report/writeMarkdown.ts';
import { writeDocx } from '../../../main/report/writeDocx.ts';
import { boundsOf, marksOf } from '../../../shared/report/placed.ts';
import { isOfTheCase, numbersOfCase, printedNumbers } from '../../support/printedNumbers.ts';
import { bodyOf } from '../../support/readPages.ts';
import { SAMPLE_CREATED_AT } from '../../support/sampleCase.ts';

/** What the eleven invented cases come to on paper. */

const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-demo-reports-'));
const files: CaseFile[] = [];
beforeAll(async () => {
  const { service, cases } = await invent(path.join(folder, 'store'), 'command line');
  for (const caseId of [cases.handball, cases.climber, cases.judoka, ...cases.squad]) {
    files.push((await ask(service, 'case.open', { caseId })).file);
  }
  await service.close();
}, 60_000);
afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

/** Sentences of paragraphs and of items of lists. */
function sentencesOf(blocks: readonly Block[]): string[] {
  const said = blocks.flatMap((block): string[] => {
    if (block.block === 'paragraph') return [textOf(block.runs)];
    if (block.block === 'list') return block.items.map(textOf);
    return block.block === 'beside' ? sentencesOf(block.body) : [];
  });
  return sentencesIn(said);
}

test('Kincaid, Fishburne, Rogers & Chissom 1975 (Navy Research Branch Report 8-75): every client report reads at US grade 7 or below, about age 12', () => {
  for (const file of files) {
    const { blocks } = composeReport(requestFor(file, SAMPLE_CREATED_AT, { kind: 'client', paper: 'a4' }));
    // The last line is for machines.
    expect(readingGrade(sentencesOf(blocks.slice(0, -1))), file.athlete.name).toBeLessThanOrEqual(MOST_GRADE.report);
  }
});

test('one player was seen twice: what changed is told once, in words and in a figure, with what is too small to be sure of', () => {
  const twice = files.find(({ screeningSessions }) => screeningSessions.length > 1);
  if (twice === undefined) throw new Error('the demo has a player with two sessions');
  expect(twice.case.isInvented).toBe(true);
  const { blocks } = composeReport(requestFor(twice, SAMPLE_CREATED_AT, { kind: 'client', paper: 'a4' }));
  const at = blocks.findIndex(
    (block) => block.block === 'heading' && block.text === 'What has changed since last time',
  );
  const [told, drawn] = blocks.slice(at + 1, at + 3);
  if (told?.block !== 'list' || drawn?.block !== 'figure') throw new Error('a list and a figure follow');
  const words = told.items.map(textOf);
  const names = words.map((one) => one.split(':')[0]);
  expect(new Set(names).size).toBe(names.length);
  expect(words.some((one) => one.includes('This is a real change'))).toBe(true);
  expect(words.some((one) => one.includes('too small to be sure of'))).toBe(true);
  // h = g t² / 8 (Linthorne 2001): mean of 118, 117 and 119 pictures at 240 a second, within the spread of the three.
  const before = [118, 117, 119].reduce((sum, n) => sum + (9.80665 * (n / 240) ** 2) / 8, 0) / 3;
  expect(words.join()).toContain(`Jump height, flight time: ${(100 * before).toFixed(2)}`);
  expect(drawn.alt).toContain('18\u00a0May\u00a02026');
  // Of two numbers at the end of a row, the earlier says that it is.
  const marks = drawn.draw(470, loadFontMetrics()).marks.flatMap((mark) => (mark.mark === 'text' ? [mark.text] : []));
  const was = `was ${(100 * before).toFixed(2)}`;
  expect(marks.filter((text) => text.startsWith(was))).toHaveLength(1);
  expect(marks.filter((text) => text.startsWith('was '))).toHaveLength(names.length);
});

test('every client report has 2 to 4 pages, on both papers', () => {
  for (const file of files) {
    for (const paper of ['a4', 'letter'] as const) {
      const { pages } = placeReport(requestFor(file, SAMPLE_CREATED_AT, { kind: 'client', paper }));
      expect(pages.length, `${file.athlete.name}, ${paper}`).toBeGreaterThanOrEqual(2);
      expect(pages.length, `${file.athlete.name}, ${paper}`).toBeLessThanOrEqual(4);
    }
  }
});

test('shoulder-instability dossier, section 9: a letter has 1 to 2 pages and then its data, at most two, on both papers, a full record too', () => {
  for (const file of files) {
    for (const paper of ['a4', 'letter'] as const) {
      const { pages } = placeReport(requestFor(file, SAMPLE_CREATED_AT, { kind: 'referral', paper }));
      const signed = pages.findIndex((page) => JSON.stringify(page).includes('Signature box, blank'));
      expect(signed, `${file.athlete.name}, ${paper}`).toBeGreaterThanOrEqual(0);
      expect(signed, `${file.athlete.name}, ${paper}`).toBeLessThanOrEqual(1);
      expect(pages.length - 1 - signed, `${file.athlete.name}, ${paper}`).toBeLessThanOrEqual(2);
    }
  }
});

test('the judoka’s record is whole: nothing is missing and the letter can be final, without the mark of a draft', () => {
  const judoka = files.find(({ athlete }) => athlete.name === 'Judoka Rowan');
  if (judoka === undefined) throw new Error('the demo has a judoka');
  expect(referralEssentials(judoka)).toEqual([]);
  const letter = (isFinal: boolean) =>
    JSON.stringify(placeReport(requestFor(judoka, SAMPLE_CREATED_AT, { kind: 'referral', paper: 'a4', isFinal })));
  expect(letter(true)).not.toContain('DRAFT');
  expect(letter(false)).toContain('DRAFT');
});

test('the study of a force-plate jump tells its phases, loading and landing, each with how it was found and how sure that is', () => {
  const [handball] = files;
  if (handball === undefined) throw new Error('the demo has a handball player');
  const { blocks } = composeReport(requestFor(handball, SAMPLE_CREATED_AT, { kind: 'study', paper: 'a4' }));
  const behind = blocks.find((block) => block.block === 'table' && block.caption.startsWith('Behind the heights'));
  if (behind?.block !== 'table') throw new Error('there is a table');
  expect(behind.columns.map(({ head }) => head)).toEqual(['Measure', 'Trial 1', 'Trial 2', 'Trial 3', 'How']);
  const row = (label: string) =>
    behind.rows.find(([first]) => textOf(first ?? []).startsWith(label))?.map((cell) => textOf(cell)) ?? [];
  const details = handball.jumpTrials.flatMap(({ force }) => (force?.details === undefined ? [] : [force.details]));
  expect(details).toHaveLength(3);
  details.forEach(({ rateOfForceDevelopmentNPerS: rate, phases }, i) => {
    expect(row('Rate of force')[i + 1]).toMatch(/\s±\s.*N\/s$/);
    expect(Number.parseFloat(row('Rate of force')[i + 1] ?? '')).toBeCloseTo(rate?.value ?? 0, -1);
    expect(Number.parseFloat(row('Propulsion lasts')[i + 1] ?? '')).toBeCloseTo(
      1000 * (phases?.propulsionS.value ?? 0),
      0,
    );
  });
  expect(row('Propulsion lasts').at(-1)).toMatch(/from memory, not checked again \[\d+\]$/);
  expect(row('Peak landing force').at(-1)).toMatch(/convention, no published source \[\d+\]$/);
});

test('with nothing entered, no report has a title or a sentence that waits for a name', () => {
  const [first] = files;
  if (first === undefined) throw new Error('the demo has cases');
  const nameless = { ...first, athlete: { ...first.athlete, name: '' } };
  for (const kind of ['client', 'study', 'referral'] as const) {
    const { title, blocks } = composeReport(requestFor(nameless, SAMPLE_CREATED_AT, { kind, paper: 'a4' }));
    const heads = blocks.flatMap((one) => (one.block === 'heading' ? [one.text] : []));
    expect([title, ...heads].filter((one) => one.trimEnd().endsWith(':'))).toEqual([]);
    expect(sentencesOf(blocks).filter((one) => one.startsWith(':'))).toEqual([]);
    expect(kind === 'study' || title.endsWith(': name not recorded')).toBe(true);
  }
});

test('under a heading that says to stop and be seen, nothing says so again', () => {
  const stopped = files.filter(
    (file) => requestFor(file, SAMPLE_CREATED_AT, { kind: 'study', paper: 'a4' }).assessment.stops.length > 0,
  );
  expect(stopped.length).toBeGreaterThan(1);
  for (const file of stopped) {
    for (const kind of ['client', 'study', 'referral'] as const) {
      const { blocks } = composeReport(requestFor(file, SAMPLE_CREATED_AT, { kind, paper: 'a4' }));
      expect(sentencesOf(blocks).filter((one) => one.startsWith('Stop and be seen:'))).toEqual([]);
    }
  }
});

test('days in sentences and labels are words, never 2026-05-18', () => {
  for (const file of files) {
    for (const kind of ['client', 'study', 'referral'] as const) {
      const pages = placeReport(requestFor(file, SAMPLE_CREATED_AT, { kind, paper: 'a4' })).pages;
      const texts = pages
        .flatMap(bodyOf)
        .flatMap(marksOf)
        .map((mark) => (mark.mark === 'text' ? mark.text : ''));
      expect(texts.filter((text) => /\b\d{4}-\d{2}-\d{2}\b/.test(text))).toEqual([]);
    }
  }
});

test('law: an equation to be solved is never set equal to its answer, and a height is counted from the floor', () => {
  const [handball] = files;
  if (handball === undefined) throw new Error('the demo has a handball player');
  const { blocks } = composeReport(requestFor(handball, SAMPLE_CREATED_AT, { kind: 'study', paper: 'a4' }));
  const flat = (some: readonly Block[]): Block[] =>
    some.flatMap((block) => (block.block === 'beside' ? flat(block.body) : [block]));
  const equations = flat(blocks).flatMap((block) => (block.block === 'equation' ? [block] : []));
  const solved = equations.filter(({ formula, result }) => result !== null && formula.startsWith('dv/dt'));
  expect(solved.length).toBeGreaterThan(0);
  for (const { inputs } of solved) expect(inputs).toEqual([]);
  expect(JSON.stringify(blocks)).toContain('Centre of mass, above the floor');
});

describe('numbers', () => {
  const KINDS = ['client', 'study', 'referral'] as const;
  const printed = () =>
    files.flatMap((file) =>
      KINDS.map((kind) => {
        const request = requestFor(file, SAMPLE_CREATED_AT, { kind, paper: 'a4' });
        return {
          named: `${file.athlete.name}, ${kind}`,
          printed: printedNumbers(placeReport(request)),
          known: numbersOfCase(file, request.assessment),
        };
      }),
    );

  test('law: every number with a unit in every report is in the case, or in what was made of it, to the printed digits', () => {
    const all = printed();
    expect(all.reduce((sum, one) => sum + one.printed.length, 0)).toBeGreaterThan(1000);
    for (const one of all) {
      const strangers = one.printed.filter((number) => !isOfTheCase(number, one.known));
      const unexplained = strangers.filter(({ unit, around }) => unit !== '%' || !SHARE.test(around));
      expect(
        unexplained.map(({ around }) => around),
        one.named,
      ).toEqual([]);
    }
  });

  test('a wrong last digit of three or more is noticed three times in four at least (else it is another number of the case)', () => {
    const planted = printed().flatMap(({ printed, known }) =>
      printed
        .filter(({ digits }) => digits.replace('.', '').length >= 3)
        .map((number) => ({
          ...number,
          digits: number.digits.slice(0, -1) + ((Number(number.digits.at(-1)) + 3) % 10),
        }))
        .map((number) => !isOfTheCase(number, known)),
    );
    const noticed = planted.filter(Boolean).length / planted.length;
    expect(noticed).toBeGreaterThan(0.75);
  });
});

/** The share of a part in an uncertainty stands right behind that part, and is worked out on the page. */
const SHARE = /[\d.]+ ?[^\s\d%]+\s*\d+\s?%/;

/** Text without white space, as PDF readers place that as they see fit. */
const dense = (text: string) => text.replace(/\s+/g, '');

test.skipIf(spawnSync('pdftotext', ['-v']).error !== undefined)(
  'ISO 32000-1, 14.8.2.3: text comes out in the order of the structure, page by page, in all three kinds',
  async () => {
    for (const file of files.slice(0, 3)) {
      for (const kind of ['client', 'study', 'referral'] as const) {
        const { bytes, report } = await makeReport(file, SAMPLE_CREATED_AT, { kind, paper: 'a4' });
        const pdf = path.join(folder, 'order.pdf');
        fs.writeFileSync(pdf, bytes);
        const pages = execFileSync('pdftotext', ['-raw', pdf, '-'], { encoding: 'utf8' }).split('\f');
        for (const page of report.pages) {
          const drawn = dense(pages[page.number - 1] ?? '').normalize('NFKC');
          let at = 0;
          for (const element of bodyOf(page).filter(({ role }) => role !== 'Figure')) {
            for (const mark of marksOf(element)) {
              if (mark.mark !== 'text' || mark.actual !== undefined) continue;
              const words = dense(mark.text).normalize('NFKC');
              // What is raised or lowered, such as one sign of a symbol, goes to the line the reader thinks nearest.
              if (words.length < 4) continue;
              const found = drawn.indexOf(words, at);
              expect(
                found,
                `${file.athlete.name}, ${kind}, page ${page.number}: “${mark.text}”`,
              ).toBeGreaterThanOrEqual(0);
              at = found + words.length;
            }
          }
        }
      }
    }
  },
);

test('law: down a page, no paragraph, heading, list or table begins above the one before it', () => {
  for (const file of files) {
    for (const kind of ['client', 'study', 'referral'] as const) {
      for (const page of placeReport(requestFor(file, SAMPLE_CREATED_AT, { kind, paper: 'letter' })).pages) {
        const tops = bodyOf(page).map(boundsOf);
        tops.forEach(({ top, left }, i) => {
          const before = tops[i - 1];
          // Side by side is read from the left.
          if (before === undefined || left >= before.right) return;
          expect(top, `${file.athlete.name}, ${kind}, page ${page.number}`).toBeGreaterThanOrEqual(before.top - 1);
        });
      }
    }
  }
});

describe('de-identified', () => {
  const NAME = 'Signe Strand-Østergård';
  const IDENTIFYING = [
    'Signe',
    'Strand',
    'Østergård',
    '2001-02-27',
    '27 February 2001',
    '27\u00a0February',
    'February 27',
    '270201-4477',
    'Ravnsborg',
  ];
  /** Every field that can be typed in holds the name, in several ways of writing it. */
  const named = (file: CaseFile): CaseFile => {
    const into = (text: string) => `${text} ${NAME}, SIGNE and strand-østergård; mail signe@club.`;
    return {
      ...file,
      case: { ...file.case, question: into(file.case.question), note: into('') },
      athlete: {
        ...file.athlete,
        name: NAME,
        isPseudonym: false,
        birthDate: '2001-02-27',
        identifier: '270201-4477',
        guardianName: 'Bo Ravnsborg',
        goals: into('Throw.'),
      },
      injuries: file.injuries.map((one) => ({
        ...one,
        diagnosis: into(one.diagnosis),
        restrictions: into(''),
        mechanism: into(''),
      })),
      screeningResults: file.screeningResults.map((one) => ({ ...one, note: into(one.note) })),
      jumpTests: file.jumpTests.map((one) => ({ ...one, device: into(one.device) })),
      jumpTrials: file.jumpTrials.map((one) => ({ ...one, note: into(one.note) })),
      movementTrials: file.movementTrials.map((one) => ({ ...one, label: into(one.label) })),
    };
  };
  const search = (text: string) => IDENTIFYING.filter((one) => text.toLowerCase().includes(one.toLowerCase()));

  test.each(['client', 'study', 'referral'] as const)(
    'no identifying string is in any page, and none in bytes, decompressed streams, attachment or text, of the %s report',
    async (kind) => {
      for (const file of files) {
        const pages = placeReport(requestFor(named(file), SAMPLE_CREATED_AT, { kind, paper: 'a4', deidentify: true }));
        expect(search(JSON.stringify(pages))).toEqual([]);
      }
      for (const file of files.slice(0, Number(process.env['DRAWN_CASES'] ?? 2))) {
        const asked = { kind, paper: 'a4', deidentify: true, attachCase: true } as const;
        const { bytes } = await makeReport(named(file), SAMPLE_CREATED_AT, asked);
        const raw = Buffer.from(bytes).toString('latin1');
        expect(search(raw)).toEqual([]);
        const streams = decompressed(bytes);
        expect(streams).toContain('"athlete":{');
        expect(search(streams)).toEqual([]);
        expect(search(Buffer.from(streams, 'latin1').toString('utf8'))).toEqual([]);
        if (spawnSync('pdftotext', ['-v']).error === undefined) {
          const pdf = path.join(folder, 'named.pdf');
          fs.writeFileSync(pdf, bytes);
          const text = execFileSync('pdftotext', [pdf, '-'], { encoding: 'utf8' });
          expect(text).toContain('the athlete');
          expect(search(text)).toEqual([]);
        }
      }
    },
    60_000,
  );

  test('nor in the texts that can be edited', async () => {
    for (const file of files.slice(0, 2)) {
      const request = requestFor(named(file), SAMPLE_CREATED_AT, { kind: 'study', paper: 'a4' });
      expect(search(JSON.stringify(writeMarkdown(request)))).toEqual([]);
      const parts = unzipped(await writeDocx(request));
      expect(parts).toContain('the athlete');
      expect(search(parts)).toEqual([]);
    }
  });
});

/** All streams of a PDF as text, inflated where they are deflated (ISO 32000-1, 7.4.4). */
function decompressed(bytes: Uint8Array): string {
  const raw = Buffer.from(bytes);
  const parts: string[] = [];
  for (let at = raw.indexOf('stream\n'); at >= 0; at = raw.indexOf('stream\n', at + 1)) {
    const end = raw.indexOf('endstream', at);
    const body = raw.subarray(at + 7, end);
    try {
      parts.push(inflateSync(body).toString('latin1'));
    } catch {
      parts.push(body.toString('latin1'));
    }
  }
  return parts.join('\n');
}

/** Names and contents of all entries of an archive (APPNOTE of the ZIP format, 4.3.7 and 4.3.12). */
function unzipped(archive: Uint8Array): string {
  const bytes = Buffer.from(archive);
  const parts: string[] = [];
  for (let at = bytes.indexOf('PK\u0001\u0002'); at >= 0; at = bytes.indexOf('PK\u0001\u0002', at + 4)) {
    const name = bytes.subarray(at + 46, at + 46 + bytes.readUInt16LE(at + 28)).toString();
    const local = bytes.readUInt32LE(at + 42);
    const start = local + 30 + bytes.readUInt16LE(local + 26) + bytes.readUInt16LE(local + 28);
    const body = bytes.subarray(start, start + bytes.readUInt32LE(at + 20));
    parts.push(name, (bytes.readUInt16LE(at + 10) === 0 ? body : inflateRawSync(body)).toString());
  }
  return parts.join('\n');
}
