import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, describe, expect, test } from 'vitest';
import { jumpTraceCsv } from '../../../main/demo/jumpTrace.ts';
import { randomSource } from '../../../main/demo/randomSource.ts';
import { openService } from '../../../main/service.ts';
import { sampleCase } from '../../support/sampleCase.ts';
import { caseframe } from './caseframe.ts';

const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-test-'));
const store = (name: string) => path.join(folder, name);
const write = (name: string, content: unknown) => {
  const file = path.join(folder, name);
  fs.writeFileSync(file, JSON.stringify(content));
  return file;
};
const inStore = (name: string) => ['--folder', store(name), '--json'];
const table = (name: string, text: string) => {
  const file = path.join(folder, name);
  fs.writeFileSync(file, text);
  return file;
};
afterAll(() => fs.rmSync(folder, { recursive: true }));

describe('a case on the command line', () => {
  const from = write('sample.json', sampleCase());

  test('opened from a file, shown by its number, judged, checked, reported on, and found sound', () => {
    const made = caseframe('case', 'new', '--from', from, ...inStore('path'));
    expect(made).toMatchObject({ code: 0, err: '' });
    const number = made.json['number'] as string;
    expect(number).toMatch(/^\d{4}-001$/);

    const shown = caseframe('case', 'show', number, ...inStore('path')).json;
    expect(shown['athlete']).toMatchObject({ name: sampleCase().athlete.name });
    expect(shown['injuries']).toHaveLength(sampleCase().injuries.length);
    expect(shown['screeningResults']).toHaveLength(sampleCase().screeningResults.length);

    const judged = caseframe('rules', 'evaluate', number, ...inStore('path'));
    expect(judged.code).toBe(0);
    const again = caseframe('rules', 'evaluate', write('shown.json', shown), '--json');
    expect(again.json['findings']).toEqual(judged.json['findings']);

    expect(caseframe('check', number, ...inStore('path')).json['checks']).toBeInstanceOf(Array);

    const pdf = path.join(folder, 'report.pdf');
    const reported = caseframe(
      'report',
      number,
      '--kind',
      'client',
      '--paper',
      'letter',
      '--out',
      pdf,
      ...inStore('path'),
    );
    expect(reported).toMatchObject({ code: 0, err: '' });
    expect(fs.readFileSync(pdf).subarray(0, 5).toString()).toBe('%PDF-');
    expect(caseframe('verify', ...inStore('path')).json).toEqual({ sound: true, problems: [] });
  });

  test('for a person: tidy lines, nothing on standard error', () => {
    const { out, err, code } = caseframe('case', 'new', '--purpose', 'referral', '--folder', store('lines'));
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const number = /Case (\S+) opened/.exec(out)?.[1] ?? '';
    expect(caseframe('case', 'show', number, '--folder', store('lines')).out).toContain('referral');
  });
});

describe('a roster on the command line', () => {
  const squad = path.join(folder, 'squad.csv');
  fs.writeFileSync(squad, '\uFEFFName;Mass (kg)\r\nÅsa Ek;60,5\r\nBo Lind;81\r\n');

  test('a dry run shows how it is read and stores nothing; then a case each', () => {
    const dry = caseframe('roster', 'import', squad, '--dry-run', ...inStore('roster'));
    expect(dry.json).toMatchObject({ dryRun: true, problems: [], rows: [{ line: 2, athlete: { massKg: 60.5 } }, {}] });
    expect(caseframe('case', 'show', '2026-001', ...inStore('roster')).code).toBe(3);
    const made = caseframe('roster', 'import', squad, ...inStore('roster'));
    expect(made).toMatchObject({ code: 0, err: '' });
    const [first] = made.json['cases'] as { caseId: string }[];
    const shown = caseframe('case', 'show', first?.caseId ?? '', ...inStore('roster')).json;
    expect(shown).toMatchObject({ athlete: { name: 'Åsa Ek', massKg: 60.5 }, case: { purpose: 'intake' } });
  });

  test('a fault: 3, with line and column, and nobody imported', () => {
    const bad = path.join(folder, 'bad.csv');
    fs.writeFileSync(bad, 'Name,Mass (kg)\nA,60\nB,heavy\n');
    expect(caseframe('roster', 'import', bad, '--dry-run', ...inStore('nobody')).code).toBe(3);
    const made = caseframe('roster', 'import', bad, ...inStore('nobody'));
    expect(made.code).toBe(3);
    expect(made.json['error']).toMatchObject({ path: 'line 3, column Mass (kg)' });
    expect(caseframe('case', 'show', '2026-001', ...inStore('nobody')).code).toBe(3);
  });
});

describe('results of one athlete on the command line', () => {
  test('screening and jumps go into the case, in SI; a fault leaves it as it was', () => {
    const number = caseframe('case', 'new', ...inStore('results')).json['number'] as string;
    const good = table('screen.csv', 'item,side,result,pain\nsingle-leg-hop,left,143,0\nsingle-leg-hop,right,150,4\n');
    expect(caseframe('screen', 'import', number, good, '--date', '2026-11-20', ...inStore('results')).code).toBe(0);
    const jumps = table('jumps.csv', 'Flight time (ms)\n510\n523\n');
    expect(caseframe('jump', 'import', number, jumps, ...inStore('results')).code).toBe(0);
    const bad = table('bad-screen.csv', 'item,side,result\nsingle-leg-hop,left,143\nsingle-leg-hop,right,far\n');
    const refused = caseframe('screen', 'import', number, bad, ...inStore('results'));
    expect([refused.code, refused.json['error']]).toMatchObject([3, { path: 'line 3, column result' }]);

    const shown = caseframe('case', 'show', number, ...inStore('results')).json;
    expect(shown).toMatchObject({
      screeningSessions: [{ heldOn: '2026-11-20' }],
      screeningResults: [
        { valueSi: 1.43, painNrs: 0 },
        { valueSi: 1.5, painNrs: 4 },
      ],
      jumpTests: [{ method: 'flight-time' }],
      jumpTrials: [
        { flightTimeS: 0.51, number: 1 },
        { flightTimeS: 0.523, number: 2 },
      ],
    });
  });

  test('a force record becomes a force-plate test; one that cannot be analysed makes none', () => {
    const number = caseframe('case', 'new', ...inStore('force')).json['number'] as string;
    const jump = { massKg: 70, takeoffVelocityMPerS: 2.5, depthM: 0.3, leftShare: 0.5 };
    const force = table('force.csv', jumpTraceCsv(jump, randomSource(1)));
    expect(caseframe('jump', 'import', number, force, ...inStore('force')).code).toBe(0);
    const none = table('none.csv', 'time_s,knee_deg\n0,1\n0.1,2\n');
    expect(caseframe('jump', 'import', number, none, ...inStore('force')).code).toBe(3);
    const shown = caseframe('case', 'show', number, ...inStore('force')).json;
    expect(shown['jumpTests']).toMatchObject([{ method: 'force-plate' }]);
    expect(shown['jumpTrials']).toHaveLength(1);
  });
});

describe('refused, with a sentence, and nothing changed', () => {
  test('a file with a fault: 3, the place in it, and no case', () => {
    const bad = write('bad.json', { athlete: { massKg: -70 } });
    const made = caseframe('case', 'new', '--from', bad, ...inStore('bad'));
    expect(made.code).toBe(3);
    expect(made.err).toContain('massKg');
    expect(made.json['error']).toMatchObject({ code: 'input-malformed' });
    expect(caseframe('case', 'show', '2026-001', ...inStore('bad')).code).toBe(3);
  });

  test('a file that is not JSON, or not there: 3', () => {
    const text = path.join(folder, 'text.json');
    fs.writeFileSync(text, '{');
    expect(caseframe('case', 'new', '--from', text, ...inStore('bad')).code).toBe(3);
    expect(caseframe('case', 'new', '--from', path.join(folder, 'none.json'), ...inStore('bad')).code).toBe(3);
  });

  test('a case that is not in the store: 3', () => {
    const shown = caseframe('case', 'show', '1999-001', ...inStore('bad'));
    expect(shown.code).toBe(3);
    expect(shown.json['error']).toMatchObject({ code: 'not-found' });
  });

  test('a purpose or a report kind nobody knows, and a report without --out: 2', () => {
    expect(caseframe('case', 'new', '--purpose', 'fun', ...inStore('bad')).code).toBe(2);
    expect(caseframe('report', '2026-001', '--out', 'x.pdf', '--kind', 'poem', ...inStore('bad')).code).toBe(2);
    expect(caseframe('report', '2026-001', ...inStore('bad')).code).toBe(2);
  });

  test('a store that another program has open: 4', async () => {
    const service = await openService({ folder: store('open'), host: 'loopback' });
    const made = caseframe('case', 'new', ...inStore('open'));
    await service.close();
    expect(made.code).toBe(4);
    expect(made.json['error']).toMatchObject({ code: 'store-locked' });
  });

  test('a store made by a newer version: 4', () => {
    caseframe('case', 'new', ...inStore('newer'));
    const file = fs.readdirSync(store('newer')).find((name) => /^cases?\.sqlite$/.test(name)) ?? '';
    const database = new Database(path.join(store('newer'), file));
    database.pragma('user_version = 9999');
    database.close();
    const made = caseframe('case', 'new', ...inStore('newer'));
    expect(made.code).toBe(4);
    expect(made.json['error']).toMatchObject({ code: 'store-newer' });
  });

  test('a place that cannot be a store folder, and a report that cannot be written: 4', () => {
    const file = write('a-file', {});
    const made = caseframe('case', 'new', '--folder', file, '--json');
    expect(made.code).toBe(4);
    expect(made.json['error']).toMatchObject({ code: 'store-unwritable' });
    const { number } = caseframe('case', 'new', ...inStore('report')).json;
    const reported = caseframe('report', String(number), '--out', path.join(file, 'x.pdf'), ...inStore('report'));
    expect(reported.code).toBe(4);
  });
});
