import { execFileSync, spawnSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { sampleCase } from '../../support/sampleCase.ts';
import { caseframe, inProcess } from './caseframe.ts';

const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-report-flags-'));
const store = path.join(folder, 'store');
const at = (name: string) => path.join(folder, name);
let number = '';
const report = (...words: string[]) => caseframe('report', number, ...words, '--folder', store);
const has = (tool: string) => spawnSync(tool, ['-v']).error === undefined;

/** A PDF as general-purpose programs see it. */
function make(name: string, ...words: string[]) {
  expect(report('--out', at(name), ...words)).toMatchObject({ code: 0, err: '' });
  return {
    text: execFileSync('pdftotext', [at(name), '-'], { encoding: 'utf8' }),
    about: execFileSync('pdfinfo', [at(name)], { encoding: 'utf8' }),
    inside: execFileSync('pdfdetach', ['-list', at(name)], { encoding: 'utf8' }),
  };
}

beforeAll(() => {
  const from = at('case.json');
  const file = sampleCase();
  fs.writeFileSync(
    from,
    JSON.stringify({ ...file, athlete: { ...file.athlete, name: 'Ingrid Testdottir', isPseudonym: false } }),
  );
  number = String(caseframe('case', 'new', '--from', from, '--folder', store, '--json').json['number']);
}, 60_000);
afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

test.skipIf(!has('pdftotext'))(
  '--paper, --deidentify, --with-names and --attach-case each show in the PDF',
  () => {
    const plain = make('plain.pdf');
    expect(plain.text).toContain('Ingrid');
    expect(plain.about).toContain('(A4)');
    expect(plain.inside).toContain('0 embedded');
    const letter = make('letter.pdf', '--paper', 'letter', '--deidentify', '--attach-case');
    expect(letter.about).toContain('(letter)');
    expect(letter.text).not.toContain('Ingrid');
    expect(letter.inside).toContain('case-data.json');
    expect(make('study.pdf', '--kind', 'study').text).not.toContain('Ingrid');
    expect(make('named.pdf', '--kind', 'study', '--with-names').text).toContain('Ingrid');
  },
  60_000,
);

test('--as, or else the ending of the file, says what is written; figures of Markdown lie beside it', () => {
  expect(report('--kind', 'study', '--out', at('study.docx')).code).toBe(0);
  expect(fs.readFileSync(at('study.docx')).subarray(0, 2).toString()).toBe('PK');
  expect(report('--kind', 'study', '--as', 'md', '--out', at('study.txt')).code).toBe(0);
  const text = fs.readFileSync(at('study.txt'), 'utf8');
  expect(text).toMatch(/^# /m);
  for (const [, figure = ''] of text.matchAll(/\]\((figures\/[^)]+)\)/g)) expect(fs.existsSync(at(figure))).toBe(true);
}, 60_000);

test('a letter that lacks essentials is refused as final: nothing is written, and no final report is kept', () => {
  const refused = report('--kind', 'referral', '--final', '--out', at('final.pdf'));
  expect(refused.code).toBe(3);
  expect(refused.err).toContain('cannot be called final');
  expect(fs.existsSync(at('final.pdf'))).toBe(false);
});

test.each([
  ['--kind', 'poem'],
  ['--paper', 'a5'],
  ['--as', 'odt'],
  ['--deidentify', '--with-names'],
  ['--as', 'docx', '--final'],
  ['--as', 'md', '--attach-case'],
  ['--finally'],
])('usage: %s %s %s is refused before a store is opened, and nothing is written', async (...words) => {
  const given = words.filter((word) => word !== undefined);
  await expect(inProcess('report', '2026-001', '--out', at('never.pdf'), ...given)).rejects.toThrow(/--/);
  expect(fs.existsSync(at('never.pdf'))).toBe(false);
});
