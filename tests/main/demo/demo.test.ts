import { createHash } from 'node:crypto';
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { handballJumpThrow } from '../../../shared/knowledge/movements/handball-jump-throw.ts';
import { caseframe, type Ran } from '../cli/caseframe.ts';

const has = (program: string) => spawnSync(program, ['--version']).error === undefined;
const out = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-test-'));
const REPORTS = ['handball-player.pdf', 'stop-and-be-seen.pdf', 'climber-referral.pdf', 'judoka-referral.pdf'];
const textOf = (name: string) =>
  spawnSync('pdftotext', ['-raw', path.join(out, name), '-'], { encoding: 'utf8' }).stdout.replaceAll(/\s+/g, ' ');
const hash = (folder: string, name: string) =>
  createHash('sha256')
    .update(fs.readFileSync(path.join(folder, name)))
    .digest('hex');
let ran: Ran;

beforeAll(() => {
  ran = caseframe('demo', '--out', out, '--json');
}, 120_000);
afterAll(() => {
  fs.rmSync(out, { recursive: true });
  fs.rmSync(ran.json['folder'] as string, { recursive: true });
});

describe('npm run demo: the whole path on invented cases', () => {
  test('ends well, with a sound store of eleven cases and four reports', () => {
    expect(ran.err).toBe('');
    expect(ran.code).toBe(0);
    expect(ran.json['problems']).toEqual([]);
    expect(fs.readdirSync(out).toSorted()).toEqual(REPORTS.toSorted());
    expect((ran.json['cases'] as { squad: string[] }).squad).toHaveLength(8);
  });

  test('exactly one player of the squad must stop and be seen: the one with pain', () => {
    expect(ran.json['stops']).toEqual([
      { athlete: 'Player Elm', words: [expect.stringMatching(/pain 6 of 10/) as string] },
    ]);
  });

  test('the store can be read by the other commands', () => {
    const folder = ran.json['folder'] as string;
    expect(caseframe('verify', '--folder', folder, '--json').json).toEqual({ sound: true, problems: [] });
    const { handball } = ran.json['cases'] as { handball: string };
    const shown = caseframe('case', 'show', handball, '--folder', folder, '--json');
    expect(shown.json['athlete']).toMatchObject({ name: 'Player Sorrel', isPseudonym: true });
    expect(shown.json['case']).toMatchObject({ isInvented: true });
    expect((shown.json['jumpTrials'] as { force: unknown }[]).filter(({ force }) => force !== null)).toHaveLength(3);
    expect((shown.json['findingDecisions'] as unknown[]).length).toBeGreaterThan(0);
  });

  test('made again, the very same bytes', () => {
    const again = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-test-'));
    const second = caseframe('demo', '--out', again, '--json');
    for (const name of REPORTS) expect(hash(again, name), name).toBe(hash(out, name));
    fs.rmSync(again, { recursive: true });
    fs.rmSync(second.json['folder'] as string, { recursive: true });
  });
});

describe.skipIf(!has('qpdf'))('qpdf finds no fault in', () => {
  test.each(REPORTS)('%s', (name) => {
    const { status, stderr } = spawnSync('qpdf', ['--check', path.join(out, name)], { encoding: 'utf8' });
    expect(stderr).toBe('');
    expect(status).toBe(0);
  });
});

describe.skipIf(!has('pdftotext'))('pdftotext reads', () => {
  test('in the client report the pseudonym, every phase of the throw, and what was held back with its reason', () => {
    const text = textOf('handball-player.pdf');
    expect(text).toContain('Player Sorrel');
    expect(text).toContain('Invented data');
    for (const { label } of handballJumpThrow.phases) expect(text).toContain(label);
    expect(text).toMatch(/held back/i);
    expect(text).toMatch(/shoulder instability, posterior/i);
    expect(text).toContain('Screening is not diagnosis');
  });

  test('in the one of the player in pain the stop, in words', () => {
    const text = textOf('stop-and-be-seen.pdf');
    expect(text).toContain('Player Elm');
    expect(text).toMatch(/be seen/i);
    expect(text).toMatch(/before you train on/i);
    expect(text).toContain('A test of your leg hurt: 6 of 10.');
  });

  test('in the letter the addressee, the direction and the question', () => {
    const text = textOf('climber-referral.pdf');
    expect(text).toContain('Climber Juniper');
    expect(text).toContain('Shoulder clinic (invented)');
    expect(text).toMatch(/anterior/i);
    expect(text).toContain('may she hang meanwhile?');
  });

  // Dates 8 March 2025, 24 January, 4 July and 30 July 2026: three within a year, the first by injury.
  test('in the full letter the four parts by Kuhn 2011, worked out from four dated events', () => {
    const text = textOf('judoka-referral.pdf');
    expect(text).toMatch(/Frequency: occasional – 4 events, 3 in the fullest year/);
    expect(text).toMatch(/Cause: traumatic – as recorded of the first event/);
    expect(text).toMatch(/Main direction: anterior – 4 of 4 events/);
    expect(text).toMatch(/Severity: dislocation – fully out in 4 of 4 events/);
  });
});
