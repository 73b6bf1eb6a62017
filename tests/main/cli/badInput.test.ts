import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { DomainError } from '../../../shared/errors.ts';
import { caseframe, inProcess } from './caseframe.ts';

const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-test-'));
afterAll(() => fs.rmSync(folder, { recursive: true }));

let files = 0;
const write = (text: string) => {
  files += 1;
  const file = path.join(folder, `input-${files}.txt`);
  fs.writeFileSync(file, text);
  return file;
};

/** A code of the closed list that the command line answers with exit 3, and a sentence: the function, its need, what it got. */
async function refused(words: readonly string[]): Promise<DomainError> {
  const thrown = await inProcess(...words).then(
    () => null,
    (error: unknown) => error,
  );
  if (!(thrown instanceof DomainError)) throw new Error(`not refused on purpose: ${String(thrown)}`);
  expect(thrown.code).not.toMatch(/internal|store|safety/);
  expect(thrown.message).toMatch(/^\w+( [a-z-]+)* (needs|finds no|found) .+/);
  return thrown;
}

test('each command that reads a file answers a bad one with exit 3, on standard error and as its one JSON document', () => {
  for (const words of [
    ['jump', 'force', write('')],
    ['flight', 'fit', write(''), '--columns', 't,x,y'],
    ['smooth', write(''), '--columns', 't,y'],
    ['trial', write('')],
  ]) {
    const { code, json, err } = caseframe(...words, '--json');
    expect(code).toBe(3);
    const { error } = json as { error: { message: string } };
    expect(err).toContain(error.message);
  }
});

const table = (header: string, row: (i: number) => string, count = 3000) =>
  [header, ...Array.from({ length: count }, (_, i) => row(i))].join('\n');
const seconds = (i: number) => (i / 1000).toFixed(3);

const standing = (i: number) => `${seconds(i)},700`;

const jumpForce = (text: string, ...more: string[]) => refused(['jump', 'force', write(text), ...more]);

describe('jump force', () => {
  test.each([
    ['NaN', table('time_s,fz_N', (i) => (i === 1500 ? `${seconds(i)},NaN` : standing(i))), /found “NaN”/, /line 1502/],
    ['an empty cell', table('time_s,fz_N', (i) => (i === 7 ? `${seconds(i)},` : standing(i))), /empty cell/, /line 9/],
    [
      'times that fall',
      table('time_s,fz_N', (i) => (i === 5 ? '0.001,700' : standing(i))),
      /times that rise, got/,
      /line 7/,
    ],
    ['a header but no rows', 'time_s,fz_N\n', /rows of numbers/, null],
    ['nothing at all', '', /the file is empty/, null],
    ['a wrong delimiter', table('time_s|fz_N', (i) => `${seconds(i)}|700`), /needs/, null],
    ['decimal commas between commas', table('time_s,fz_N', (i) => `0,${i},700,5`), /needs|finds/, null],
    ['one sample', 'time_s,fz_N\n0,700\n', /needs/, null],
    ['an empty plate', table('time_s,fz_N', (i) => `${seconds(i)},0`), /no reading exceeds/, null],
    ['nobody who jumps', table('time_s,fz_N', standing), /found none/, null],
  ])('%s', async (_what, text, message, place) => {
    const error = await jumpForce(text);
    expect(error.message).toMatch(message);
    if (place !== null) expect(error.path).toMatch(place);
  });
  test('a mass of 0 kg, and a rate of 0 Hz', async () => {
    const text = table('fz_N', () => '700');
    expect((await jumpForce(text, '--rate', '1000', '--mass', '0')).message).toContain('got 0');
    expect((await jumpForce(text, '--rate', '0')).message).toContain('got 0');
  });
});

describe.each([
  ['flight fit', ['--columns', 't,x,y'], 't,x,y', (i: number) => `${seconds(i)},${i},${i}`],
  ['smooth', ['--columns', 't,y', '--cutoff', '6'], 't,y', (i: number) => `${seconds(i)},${i}`],
])('%s', (command, options, header, row) => {
  const read = (text: string) => refused([...command.split(' '), write(text), ...options]);
  const cells = (i: number) => row(i).split(',');

  test.each([
    [
      'NaN',
      table(header, (i) => (i === 4 ? [cells(i)[0], 'NaN', ...cells(i).slice(2)].join(',') : row(i)), 30),
      /found “NaN”/,
    ],
    ['infinity', table(header, (i) => (i === 4 ? row(i).replace(/,\d+$/, ',Infinity') : row(i)), 30), /Infinity/],
    ['times that fall', table(header, (i) => (i === 5 ? row(1) : row(i)), 30), /times that rise, got/],
    ['one sample', table(header, row, 1), /at least .+, got 1/],
    ['a header but no rows', header, /rows of numbers/],
    ['nothing at all', '', /the file is empty/],
    [
      'a wrong delimiter',
      table(header.replaceAll(',', '|'), (i) => row(i).replaceAll(',', '|'), 30),
      /a column called t; the columns are/,
    ],
    ['decimal commas between commas', table(header, (i) => row(i).replaceAll('.', ','), 30), /decimal commas/],
  ])('%s', async (_what, text, message) => {
    expect((await read(text)).message).toMatch(message);
  });
  test('decimal commas between semicolons are read', () => {
    const text = table(header.replaceAll(',', ';'), (i) => row(i).replaceAll(',', ';').replaceAll('.', ','), 30);
    expect(caseframe(...command.split(' '), write(text), ...options, '--json').code).toBe(0);
  });
});

test('smooth: a cut-off above half the sampling rate, and columns or an order that are not there', async () => {
  const file = write(table('t,y', (i) => `${seconds(i)},${i}`, 50));
  expect((await refused(['smooth', file, '--columns', 't,y', '--cutoff', '900'])).message).toContain('got 900 Hz');
  expect(caseframe('smooth', file).code).toBe(2);
  expect(caseframe('smooth', file, '--columns', 't,y', '--derivative', '3').code).toBe(2);
});

test('smooth: unevenly timed samples are put on an even clock by their own times, and that is said', async () => {
  const line = table(
    't,y',
    (i) => `${(i / 30 + (i % 7 === 3 ? 0.01 : 0)).toFixed(4)},${(i / 30 + (i % 7 === 3 ? 0.01 : 0)).toFixed(4)}`,
    60,
  );
  const { code, json } = caseframe('smooth', write(line), '--columns', 't,y', '--cutoff', '4', '--json');
  expect(code).toBe(0);
  expect(String(json['warnings'])).toContain("each frame's own time");
  // Law: a straight line comes out as it went in, on whatever clock.
  const [times, values] = [json['times'] as number[], json['values'] as number[]];
  times.forEach((t, i) => expect(values[i]).toBeCloseTo(t, 3));
});

const shot = (change: Record<string, string>) => {
  const given = { speed: '7.2', angle: '52', height: '2.1', 'to-distance': '4.225', 'to-height': '3.05', ...change };
  return ['flight', ...Object.entries(given).flatMap(([key, value]) => [`--${key}=${value}`])];
};

describe('flight and jump time', () => {
  test.each([
    [{ speed: '-1' }, /got -1/],
    [{ angle: '120' }, /from -90° to 90°/],
    [{ 'to-distance': '0' }, /got 0/],
  ])('%o', async (change, message) => {
    expect((await refused(shot(change))).message).toMatch(message);
  });
  test('jump time 0, and a frame rate of 0', async () => {
    expect((await refused(['jump', 'time', '0'])).message).toContain('got 0');
    expect((await refused(['jump', 'time', '0.5', '--fps', '0'])).message).toContain('got 0');
  });
});

const refusedTrial = (content: unknown) =>
  refused(['trial', write(typeof content === 'string' ? content : JSON.stringify(content))]);

describe('trial', () => {
  const good = {
    format: 'caseframe-trial',
    version: 1,
    movement: 'countermovement-jump',
    filmedOn: '2026-11-18',
    side: 'none',
    captureRateHz: 120,
    calibration: null,
    points: { 'hip-left': [[0, 1, 2]] },
  };
  test('no JSON, frames that fall, a coordinate that is null in half, an unknown movement, no capture rate', async () => {
    expect((await refusedTrial('{')).message).toContain('needs JSON');
    const fallen = await refusedTrial({
      ...good,
      points: {
        'hip-left': [
          [3, 1, 2],
          [2, 1, 2],
        ],
      },
    });
    expect(fallen.message).toContain('got 2 after 3');
    expect(fallen.path).toBe('points.hip-left.1');
    expect((await refusedTrial({ ...good, points: { 'hip-left': [[0, 'x', 2]] } })).path).toContain(
      'points.hip-left.0',
    );
    expect((await refusedTrial({ ...good, movement: 'moonwalk' })).message).toContain('moonwalk');
    expect((await refusedTrial({ ...good, captureRateHz: null })).message).toContain('capture rate');
  });
  test('a mass or a stature of nothing or less', async () => {
    const file = write(JSON.stringify(good));
    expect((await refused(['trial', file, '--mass', '0'])).message).toContain('got 0');
    expect((await refused(['trial', file, '--stature=-1.8'])).message).toContain('got -1.8');
    expect((await refused(['trial', file, '--frame', '1.5'])).message).toContain('got 1.5');
  });
  test('--schema prints the JSON Schema of the file; without a file it is usage', () => {
    const { code, json } = caseframe('trial', '--schema', '--json');
    expect(code).toBe(0);
    expect(json).toMatchObject({ $schema: expect.stringContaining('2020-12') as string, type: 'object' });
    expect(json['required']).toEqual(expect.arrayContaining(['format', 'movement', 'points']));
    expect(caseframe('trial').code).toBe(2);
  });
  test('an incomplete trial is answered with reasons, not refused', () => {
    const { code, json } = caseframe('trial', write(JSON.stringify(good)), '--json');
    expect(code).toBe(0);
    expect(Object.keys(json)).toEqual(
      expect.arrayContaining(['phases', 'measures', 'centreOfMass', 'angles', 'curves', 'checks', 'warnings']),
    );
    const [first] = json['phases'] as Record<string, unknown>[];
    expect(first).toMatchObject({ start: null, startReason: expect.any(String) as string });
  });
});
