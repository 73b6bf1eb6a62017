import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import { drawPdf } from '../../../main/report/drawPdf.ts';
import { loadFontMetrics } from '../../../main/report/fontMetrics.ts';
import { movementById } from '../../../shared/knowledge/movements/index.ts';
import type { Athlete } from '../../../shared/model/athlete.ts';
import { placeReport, type ReportKind } from '../../../shared/report/compose.ts';
import type { PlacedReport } from '../../../shared/report/page.ts';
import type { Paper } from '../../../shared/report/sheet.ts';
import { SAMPLE_CREATED_AT, SAMPLE_SHA256, sampleAssessment, sampleCase } from '../../support/sampleCase.ts';

const metrics = loadFontMetrics();
const folder = mkdtempSync(join(tmpdir(), 'caseframe-report-'));
const has = (tool: string): boolean => spawnSync(tool, ['-v']).error === undefined;
const run = (tool: string, ...args: string[]): string => execFileSync(tool, args, { encoding: 'utf8' });
const pathOf = (kind: ReportKind): string => join(folder, `${kind}.pdf`);

/** The sample's report, with what is said otherwise of its athlete. */
function reportFor(athlete: Partial<Athlete>, kind: ReportKind, paper: Paper = 'a4'): PlacedReport {
  const file = sampleCase();
  return placeReport({
    file: { ...file, athlete: { ...file.athlete, ...athlete } },
    assessment: sampleAssessment(),
    kind,
    paper,
    metrics,
    createdAt: SAMPLE_CREATED_AT,
    caseSha256: SAMPLE_SHA256,
  });
}

beforeAll(async () => {
  for (const kind of ['client', 'study', 'referral'] as const) {
    writeFileSync(pathOf(kind), await drawPdf(reportFor({}, kind)));
  }
});

describe.skipIf(!has('qpdf'))('qpdf, a general-purpose library', () => {
  test.each(['client', 'study', 'referral'] as const)('finds no fault in the %s report', (kind) => {
    expect(run('qpdf', '--check', pathOf(kind))).toContain('No syntax or stream encoding errors');
  });

  test('ISO 32000-1, 14.7 and 14.9.2: the file is tagged, names its language and shows its title', () => {
    const json = JSON.parse(run('qpdf', '--json', '--json-key=qpdf', pathOf('client'))) as {
      qpdf: [unknown, Record<string, { value?: unknown }>];
    };
    const values = Object.values(json.qpdf[1]).map((one) => JSON.stringify(one.value ?? null));
    const catalog = values.find((value) => value.includes('"/Type":"/Catalog"'));
    expect(catalog).toContain('"/Lang":"u:en-GB"');
    expect(catalog).toContain('/StructTreeRoot');
    expect(catalog).toContain('/Outlines');
    expect(values.some((value) => value.includes('"/DisplayDocTitle":true'))).toBe(true);
    expect(values.some((value) => value.includes('"/Marked":true'))).toBe(true);
  });
});

describe.skipIf(!has('pdffonts'))('pdffonts', () => {
  test('every typeface is embedded, subset and mapped to Unicode', () => {
    const rows = run('pdffonts', pathOf('study')).trim().split('\n').slice(2);
    expect(rows.length).toBeGreaterThan(3);
    for (const row of rows) {
      expect(row).toMatch(/^[A-Z]{6}\+SourceS/);
      expect(row).toMatch(/yes\s+yes\s+yes/);
    }
  });
});

const textOf = (kind: ReportKind): string => run('pdftotext', '-layout', pathOf(kind), '-').replace(/\s+/g, ' ');

describe.skipIf(!has('pdftotext'))('pdftotext', () => {
  test('the client report holds the pseudonym, the study every phase, what was held back and why, and the cautions', () => {
    expect(textOf('client')).toContain('Movement assessment: Tern');
    const text = textOf('study');
    expect(text).toContain('Invented data');
    for (const phase of movementById('handball-jump-throw')?.phases ?? []) expect(text).toContain(phase.label);
    expect(text).toContain('Held back: what is usually suggested here. Reason: shoulder instability, posterior');
    expect(text).toContain('Screening is not diagnosis');
    expect(text).toContain(SAMPLE_SHA256);
    expect(text).toContain('Page 1 of');
  });

  test('law: advice that was withheld reaches no report', () => {
    for (const kind of ['client', 'study', 'referral'] as const) {
      const text = textOf(kind);
      for (const finding of sampleAssessment().findings) {
        if (finding.withheld !== null) expect(text).not.toContain(finding.withheld.text.slice(0, 24));
      }
    }
  });

  test('the practitioner’s decisions stand: the reworded advice instead of the rule’s, the reason of what was set aside', () => {
    const text = textOf('study');
    expect(text).toContain('Split squats with a slow way down');
    expect(text).not.toContain('Drop landings from a low box');
    expect(text).toContain('Set aside by the practitioner: The camera stood oblique');
    expect(text).not.toContain('Run-up drills with a tall last step');
  });

  test('the letter says draft until a person signs, and what it still lacks', () => {
    const text = textOf('referral');
    expect(text).toContain('referral letter · DRAFT');
    expect(text).toContain('Draft: still missing Addressee. Urgency.');
  });

  test('law: every number with decimals carries a unit, and true minus signs only', () => {
    const text = textOf('study')
      .replace(/(Caseframe|kernel|rules) \d+\.\d+\.\d+/g, '')
      // Volume and issue numbers of the works cited.
      .replace(/Sources .*? Case-report checklist/g, '');
    const bare = text.match(/\d\.\d+(?![\d.]*(\s?(±|°|%|cm|mm|m|s|ms|kg|N|Hz|W|to\s\d)))[^\d.].{0,12}/g) ?? [];
    expect(bare).toEqual([]);
    expect(text).not.toMatch(/[=\s(]-\d/);
  });
});

test('same case, same bytes: two processes with different time zones and locales', () => {
  const script = fileURLToPath(new URL('../../support/drawSample.ts', import.meta.url));
  const digest = (env: Record<string, string>): string =>
    execFileSync(process.execPath, [script, 'client'], { encoding: 'utf8', env: { ...process.env, ...env } });
  const here = digest({ TZ: 'America/New_York', LANG: 'en_US.UTF-8', LC_ALL: 'en_US.UTF-8' });
  const there = digest({ TZ: 'Asia/Tokyo', LANG: 'de_DE.UTF-8', LC_ALL: 'de_DE.UTF-8' });
  expect(here).toMatch(/^[0-9a-f]{64}$/);
  expect(there).toBe(here);
});

test('a title with & and < leaves the metadata well formed', async () => {
  const file = sampleCase();
  file.athlete.name = 'A & B <c>';
  const report = placeReport({
    file,
    assessment: sampleAssessment(),
    kind: 'client',
    paper: 'a4',
    metrics,
    createdAt: SAMPLE_CREATED_AT,
    caseSha256: SAMPLE_SHA256,
  });
  const path = join(folder, 'ampersand.pdf');
  writeFileSync(path, await drawPdf(report));
  const xmp = /<x:xmpmeta[\s\S]*<\/x:xmpmeta>/.exec(readFileSync(path, 'latin1'))?.[0] ?? '';
  expect(xmp).toContain('Movement assessment: A &#38; B &#60;c&#62;');
});

test.skipIf(!has('pdftotext'))(
  'a name in letters that the typefaces lack can still be copied out (ISO 32000-1, 14.9.4 ActualText)',
  async () => {
    const path = await drawNamed('שרה לוי', true, 'client');
    expect(run('pdftotext', path, '-')).toMatch(/שרה|הרש/);
  },
);

test.skipIf(!has('pdftotext') || !has('qpdf'))(
  'a de-identified study holds no part of the name in text, metadata or bookmarks',
  async () => {
    const path = await drawNamed('Signe Strandskov', false, 'study');
    expect(run('pdftotext', path, '-')).not.toMatch(/signe|strandskov/i);
    expect(run('qpdf', '--qdf', '--object-streams=disable', path, '-')).not.toMatch(/signe|strandskov/i);
    const bookmarks = run('qpdf', '--json', '--json-key=outlines', path);
    expect(bookmarks).toContain('Discussion');
    expect(bookmarks).not.toMatch(/signe|strandskov/i);
  },
);

async function drawNamed(name: string, isPseudonym: boolean, kind: ReportKind): Promise<string> {
  const goals = `${name} wants to throw again.`;
  const report = reportFor({ name, isPseudonym, goals }, kind, 'letter');
  const path = join(folder, `${kind}-named.pdf`);
  writeFileSync(path, await drawPdf(report));
  return path;
}

/** Names as people of several languages write them, and what Unicode's NFKC makes of them. */
const NAMES = ['דנה כהן־לוי', 'محمد بن عبد العزيز القحطاني', 'نور حداد', 'علی\u200cرضا پورمحمدی', 'Nour نور Haddad'];

describe.skipIf(!has('pdftotext') || !has('pdffonts'))('names written from right to left', () => {
  test.each(NAMES)('%s: extracted in reading order, in an embedded typeface, in all three kinds', async (name) => {
    for (const kind of ['client', 'study', 'referral'] as const) {
      const file = join(folder, `named-${kind}.pdf`);
      writeFileSync(file, await drawPdf(reportFor({ name, isPseudonym: true }, kind)));
      // pdftotext guesses which way a whole line goes and joins words of two directions: names are found word by word.
      const text = run('pdftotext', file, '-')
        .replaceAll(/\p{Cf}/gu, '')
        .normalize('NFKC');
      for (const word of name
        .replaceAll(/\p{Cf}/gu, '')
        .normalize('NFKC')
        .split(' '))
        expect(text).toContain(word);
      const faces = run('pdffonts', file);
      expect(faces).toMatch(
        /\p{Script=Hebrew}/u.test(name) ? /NotoSansHebrew.*yes\s+yes\s+yes/ : /Vazirmatn.*yes\s+yes\s+yes/,
      );
    }
  });

  test('a report in Latin letters embeds none of their typefaces', () => {
    for (const kind of ['client', 'study', 'referral'] as const)
      expect(run('pdffonts', pathOf(kind))).not.toMatch(/Hebrew|Vazirmatn/);
  });
});
