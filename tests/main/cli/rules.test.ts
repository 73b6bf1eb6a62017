import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { byReader } from '../../../shared/rules/byReader.ts';
import { sampleCase } from '../../support/sampleCase.ts';
import { caseframe } from './caseframe.ts';

// What a pack must be refused for is listed in the brief of the judging (knowledge as data). The pack below is invented.

const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-rules-'));
afterAll(() => fs.rmSync(folder, { recursive: true }));
const write = (name: string, content: unknown) => {
  const file = path.join(folder, name);
  fs.writeFileSync(file, JSON.stringify(content));
  return file;
};
const own = {
  id: 'own/drifts-on-landing',
  kind: 'intervention',
  movement: 'countermovement-jump',
  phase: 'landing',
  region: 'knee',
  all: [{ measure: 'landing.drift', comparator: '>', threshold: 40, unit: 'cm' }],
  wording: byReader(() => ({
    finding: 'Lands {value} from the take-off.',
    intervention: 'Jump up a wall, hands on it.',
  })),
  drill: {
    label: 'Jumps at a wall',
    dose: '3 sets of 5, twice a week',
    progression: 'Away from the wall when every landing is on the mark.',
    source: { cite: 'Own convention of this clinic', status: 'convention' },
  },
  retest: { measure: 'landing.drift', afterDays: 28 },
  loads: ['jumping', 'effort'],
  sources: [{ cite: 'Own convention of this clinic', status: 'convention' }],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach'],
  since: '2026-11-01',
};
const pack = (change: Record<string, unknown> = {}) => ({
  format: 'caseframe-rules',
  version: 1,
  name: 'Our clinic',
  rules: [{ ...own, ...change }],
});
const check = (name: string, content: unknown) => caseframe('rules', 'check', write(name, content), '--json');

describe('rules check', () => {
  test('what comes with the program is clean', () => {
    expect(caseframe('rules', 'check', '--json')).toMatchObject({ code: 0, err: '', json: { problems: [] } });
  });

  test('a pack that keeps to the form is, too', () => {
    expect(check('sound.json', pack())).toMatchObject({ code: 0, json: { rules: 1, problems: [] } });
  });

  test.each([
    ['no source', { sources: [] }, /no source/],
    ['a unit of another kind', { all: [{ ...own.all[0], unit: 'deg' }] }, /measured in m, its threshold in deg/],
    ['an unknown measure', { all: [{ ...own.all[0], measure: 'luck' }] }, /no measure "luck"/],
    ['no effect for an injury of the region', { loads: [] }, /says nothing for Knee, anterior cruciate ligament/],
    [
      'a contradiction of a shipped rule',
      {
        id: 'own/praise',
        kind: 'confirmation',
        wording: byReader(() => ({ finding: 'Lands well.', intervention: '' })),
        drill: null,
        retest: null,
        phase: 'landing',
        all: [{ measure: 'landing.kneeFlexPeak', comparator: '>', threshold: 5, unit: 'deg' }],
      },
      /confirms what countermovement-jump\/stiff-landing would change/,
    ],
  ])('%s is refused with the file and the reason, code 3', (name, change, reason) => {
    const ran = check(`${name}.json`, pack(change));
    expect(ran.code).toBe(3);
    const problems = ran.json['problems'] as { file: string; problem: string }[];
    expect(problems.map(({ problem }) => problem).join('; ')).toMatch(reason);
    expect(problems.every(({ file }) => file.endsWith(`${name}.json`))).toBe(true);
  });

  test.each([
    ['an id of a shipped rule', { id: 'any/red-flag-before-taking-part' }, /rules\.0\.id/],
    ['a misspelt field', { colour: 'red' }, /knows nothing called colour/],
  ])('%s is refused with the place in the file, code 3', (name, change, reason) => {
    const ran = check(`${name}.json`, pack(change));
    expect(ran).toMatchObject({ code: 3 });
    expect(ran.err).toMatch(reason);
  });

  test('a file that is not JSON, and one that is not there: code 3', () => {
    const file = path.join(folder, 'not.json');
    fs.writeFileSync(file, '{');
    expect(caseframe('rules', 'check', file)).toMatchObject({
      code: 3,
      err: expect.stringContaining('not JSON') as string,
    });
    expect(caseframe('rules', 'check', path.join(folder, 'absent.json')).code).toBe(3);
  });
});

describe('rules explain', () => {
  test('the limit with its basis, the sources and the injuries, in words', () => {
    const { out, code } = caseframe('rules', 'explain', 'any/pain-in-jump-test');
    expect(code).toBe(0);
    expect(out).toContain('Holds if: Pain in a jump test: at least 1 of 10');
    expect(out).toContain('Limit: convention, no published source');
    expect(out).toContain('With Bone stress injury: stops it.');
  });

  test('one of a pack', () => {
    const { json } = caseframe('rules', 'explain', own.id, '--pack', write('explained.json', pack()), '--json');
    expect(json).toMatchObject({ rule: { id: own.id }, inWords: { basis: 'convention, no published source' } });
  });

  test('an unknown rule: code 3, and what is near', () => {
    const { code, err } = caseframe('rules', 'explain', 'red-flag');
    expect(code).toBe(3);
    expect(err).toContain('any/red-flag-before-taking-part');
  });
});

test('rules evaluate: each finding has what the brief of the command line names', () => {
  const { json } = caseframe('rules', 'evaluate', write('case.json', sampleCase()), '--json');
  const findings = json['findings'] as Record<string, unknown>[];
  expect(findings.length).toBeGreaterThan(0);
  for (const name of ['id', 'kind', 'outcome', 'measure', 'threshold', 'effects', 'text', 'source', 'trace']) {
    expect(
      findings.every((one) => name in one),
      name,
    ).toBe(true);
  }
});

test('rules evaluate with a pack judges by it too, and refuses a pack that must not be used', () => {
  const from = write('judged.json', sampleCase());
  const judged = (name: string, change: Record<string, unknown>) =>
    caseframe('rules', 'evaluate', from, '--pack', write(name, pack(change)), '--json');
  const fires = {
    movement: 'any',
    phase: 'profile',
    all: [{ measure: 'body.mass', comparator: '>', threshold: 1, unit: 'kg' }],
  };
  const { json, code } = judged('fires.json', fires);
  expect(code).toBe(0);
  expect((json['findings'] as { ruleId: string }[]).map(({ ruleId }) => ruleId)).toContain(own.id);
  expect(judged('refused.json', { sources: [] }).code).toBe(4);
});

describe('rules for every case, and updates', () => {
  const store = path.join(folder, 'store');
  const run = (...words: string[]) => caseframe('rules', ...words, '--folder', store, '--json');

  test('a pack goes in, comes out with its SHA-256, and a tampered copy is refused', () => {
    const file = write('own.json', pack());
    expect(run('import', file)).toMatchObject({ code: 0, json: { rules: 1, sha256: null } });
    const out = path.join(folder, 'out.json');
    const written = run('export', '--out', out);
    expect(written).toMatchObject({ code: 0, json: { file: out } });
    expect(caseframe('rules', 'check', out, '--json')).toMatchObject({ code: 0 });
    const tampered = path.join(folder, 'tampered.json');
    fs.writeFileSync(tampered, fs.readFileSync(out, 'utf8').replace('"threshold": 40', '"threshold": 4'));
    const other = path.join(folder, 'other');
    expect(caseframe('rules', 'import', tampered, '--folder', other, '--json')).toMatchObject({ code: 4 });
    expect(caseframe('rules', 'export', '--out', out, '--folder', other, '--json').code).toBe(3);
  }, 60_000);

  test('an update that waits for nothing says so', () => {
    expect(run('update')).toMatchObject({ code: 0, json: { waiting: 0, cases: [], accepted: false } });
  }, 30_000);
});
