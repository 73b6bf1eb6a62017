import fs from 'node:fs';
import { writeC3d } from '../exchange/c3d/writeC3d.ts';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { jumpTraceCsv } from '../../../main/demo/jumpTrace.ts';
import { randomSource } from '../../../main/demo/randomSource.ts';
import type { TrialFile } from '../../../shared/exchange/trialFile.ts';
import { EXAMPLES, id } from '../../conformance/examples.ts';
import { type Asked, aService, TODAY } from './aService.ts';

let made: Asked;
let caseId: string;
beforeEach(async () => {
  made = await aService();
  ({ caseId } = await made.ask('case.create', { purpose: 'study', athleteId: null, openedOn: TODAY }));
  const test = { ...EXAMPLES.jumpTest, caseId, method: 'force-plate' as const };
  await made.ask('case.edit', { caseId, edits: [{ op: 'create', kind: 'jumpTest', record: test }] });
});
afterEach(() => made.dispose());

const MASS_KG = 70;
const V = 2.5;
const text = jumpTraceCsv({ massKg: MASS_KG, takeoffVelocityMPerS: V, depthM: 0.3, leftShare: 0.5 }, randomSource(1));
/** The same jump as a plate that gives kilogram-force writes it; 1 kgf = 9.80665 N by definition. */
const inKilograms = text.replaceAll(/,(-?[\d.]+)/g, (_cell, newtons) => `,${(Number(newtons) / 9.80665).toFixed(4)}`);
const file = { fileName: 'jump.csv', text, columns: [], rateHz: null, massKg: null };
/** The record and, when the jumper stands again, the same once more. */
function twice(record: string): string {
  const [head = '', ...rows] = record.trim().split('\n');
  const all = [...rows, ...rows].map((row, i) => row.replace(/^[^,]*/, (i / 1000).toFixed(3)));
  return [head, ...all].join('\n');
}
const testId = EXAMPLES.jumpTest.id;

describe('a force file', () => {
  test('law: an invented record of 70 kg leaving the floor at 2.5 m/s is read as such, height v²/2g', async () => {
    const {
      available,
      summaries: [summary],
      trace,
    } = await made.ask('jump.previewForce', { kind: 'countermovement', file });
    expect(available).toEqual(['time_s', 'fz_left_n', 'fz_right_n']);
    expect(summary?.columns).toEqual(['fz_left_n', 'fz_right_n']);
    expect(summary?.massKg.value).toBeCloseTo(MASS_KG, 1);
    expect(summary?.takeoffVelocityMPerS.value).toBeCloseTo(V, 1);
    expect(summary?.jumpHeightM.value).toBeCloseTo((V * V) / (2 * 9.80665), 1);
    expect(trace.forcesN).toHaveLength(2);
    expect((await made.ask('case.open', { caseId })).file.jumpTrials).toEqual([]);
  });

  test('imported: a trial with its summary, the file kept, the trace at hand; undo takes the trial back, not the file', async () => {
    const {
      summaries: [summary],
      trace,
    } = await made.ask('jump.previewForce', { kind: 'countermovement', file });
    const { jumpTrialId, edits } = await made.ask('jump.importForce', { caseId, testId, file });
    expect(edits.undo).toBe('jump added');
    let opened = (await made.ask('case.open', { caseId })).file;
    expect(opened.jumpTrials).toMatchObject([{ id: jumpTrialId, testId, number: 1, force: summary }]);
    expect(opened.media).toMatchObject([
      { fileName: 'jump.csv', mediaType: 'text/csv', sizeBytes: Buffer.byteLength(text) },
    ]);
    const kept = made.service.mediaFile(opened.media[0]?.sha256 ?? '');
    expect(fs.readFileSync(kept ?? '', 'utf8')).toBe(text);
    expect(await made.ask('jump.trace', { caseId, jumpTrialId })).toEqual(trace);

    await made.ask('case.undo', { caseId });
    opened = (await made.ask('case.open', { caseId })).file;
    expect([opened.jumpTrials.length, opened.media.length]).toEqual([0, 1]);
    await made.ask('jump.importForce', { caseId, testId, file });
    expect(await made.ask('store.verify', {})).toEqual({ problems: [] });
  });

  test('a second file is the second trial', async () => {
    await made.ask('jump.importForce', { caseId, testId, file });
    await made.ask('jump.importForce', { caseId, testId, file });
    expect((await made.ask('case.open', { caseId })).file.jumpTrials.map(({ number }) => number)).toEqual([1, 2]);
  });

  test.each([
    ['without a force column', { ...file, text: 'time_s,knee_deg\n0,1\n0.1,2\n' }, 'input-missing'],
    ['without rows', { ...file, text: 'time_s,fz_n\n' }, 'input-missing'],
    ['without a jump in it', { ...file, text: text.split('\n').slice(0, 1000).join('\n') }, 'not-enough-data'],
    ['with a word among the numbers', { ...file, text: text.replace('0.900,', '0.900,heavy') }, 'input-malformed'],
    ['of nothing', { ...file, text: '' }, 'input-missing'],
    ['in kilogram-force, and says so', { ...file, text: inKilograms.replaceAll('_n', '_kgf') }, 'unit-mismatch'],
    ['in kilogram-force, and does not say so', { ...file, text: inKilograms }, 'unit-mismatch'],
  ])('%s is refused in words, and nothing is kept', async (_what, bad, code) => {
    for (const [channel, request] of [
      ['jump.previewForce', { kind: 'countermovement', file: bad }],
      ['jump.importForce', { caseId, testId, file: bad }],
    ] as const) {
      const error = await made.refusal(channel, request);
      expect(error.code).toBe(code);
      expect(error.message.length).toBeGreaterThan(30);
    }
    const opened = (await made.ask('case.open', { caseId })).file;
    expect([opened.revision, opened.media.length]).toEqual([1, 0]);
  });

  test('of several jumps those chosen are kept, each with the instants placed in it by hand; law: height by flight time is g T²/8', async () => {
    const two = { ...file, text: twice(text) };
    const found = (await made.ask('jump.previewForce', { kind: 'countermovement', file: two })).summaries;
    expect(found).toHaveLength(2);
    const marks = found.map(({ landingS }, i) => ({
      onsetS: null,
      takeoffS: null,
      landingS: landingS.value + 0.01 * (i + 1),
    }));
    const moved = (await made.ask('jump.previewForce', { kind: 'countermovement', file: { ...two, marks } })).summaries;
    for (const [i, jump] of moved.entries()) {
      expect(jump.landingS.value).toBeCloseTo((found[i]?.landingS.value ?? 0) + 0.01 * (i + 1), 6);
      const flightS = jump.landingS.value - jump.takeoffS.value;
      expect(jump.jumpHeightFlightTimeM.value).toBeCloseTo((9.80665 * flightS ** 2) / 8, 6);
      expect(jump.placedByHand).toEqual(['landing']);
    }
    await made.ask('jump.importForce', { caseId, testId, file: { ...two, marks }, jumps: [1] });
    expect((await made.ask('case.open', { caseId })).file.jumpTrials.map(({ force }) => force)).toEqual([moved[1]]);
    const none = await made.refusal('jump.importForce', { caseId, testId, file: two, jumps: [2] });
    expect(none).toMatchObject({ code: 'not-found', path: 'jumps' });
    await made.ask('jump.importForce', { caseId, testId, file: two });
    expect((await made.ask('case.open', { caseId })).file.jumpTrials).toHaveLength(3);
  });

  test('columns, rate and unit decided once are kept for files with the same heads, across restarts, until forgotten; 1 kgf is 9.80665 N by definition', async () => {
    const rows = inKilograms.trim().split('\n').slice(1);
    const untold = { ...file, text: ['a,b,c', ...rows.map((row) => row.replace(/^[^,]*/, '7'))].join('\n') };
    const request = { kind: 'countermovement' as const, file: untold };
    expect(await made.refusal('jump.previewForce', request)).toMatchObject({ code: 'input-missing' });
    const reading = { columns: ['b', 'c'], rateHz: 1000, forceUnit: 'kgf' as const };
    const decided = await made.ask('jump.previewForce', { ...request, file: { ...untold, ...reading } });
    expect(decided.isRemembered).toBe(false);
    expect(decided.summaries[0]?.massKg.value).toBeCloseTo(MASS_KG, 1);
    // Looking keeps nothing; importing does.
    expect(await made.refusal('jump.previewForce', request)).toMatchObject({ code: 'input-missing' });
    const { jumpTrialId } = await made.ask('jump.importForce', { caseId, testId, file: { ...untold, ...reading } });
    await made.service.close();
    made = await aService(made.folder);
    expect(await made.ask('jump.previewForce', request)).toEqual({ ...decided, isRemembered: true });
    expect(await made.ask('jump.trace', { caseId, jumpTrialId })).toEqual(decided.trace);
    const other = { ...untold, columns: ['b'], rateHz: 1000, forceUnit: 'kgf' as const };
    expect((await made.ask('jump.previewForce', { ...request, file: other })).isRemembered).toBe(false);
    await made.ask('mapping.forget', { door: 'force', heads: decided.available });
    expect(await made.refusal('jump.previewForce', request)).toMatchObject({ code: 'input-missing' });
  });

  test('goes to a force-plate test of this case only', async () => {
    expect(await made.refusal('jump.importForce', { caseId, testId: id(77), file })).toMatchObject({
      code: 'not-found',
    });
    const fields = { method: 'flight-time' as const };
    await made.ask('case.edit', { caseId, edits: [{ op: 'patch', kind: 'jumpTest', id: testId, fields }] });
    expect(await made.refusal('jump.importForce', { caseId, testId, file })).toMatchObject({ code: 'not-comparable' });
  });
});

describe('a trial file', () => {
  const trial: TrialFile = {
    format: 'caseframe-trial',
    version: 1,
    movement: 'handball-jump-throw',
    label: 'third throw',
    filmedOn: TODAY,
    side: 'right',
    captureRateHz: 120,
    playbackRateHz: null,
    frameTimesS: null,
    calibration: { kind: 'metres', pointUM: 0.005 },
    ball: null,
    target: null,
    painNrs: null,
    points: {
      'wrist-right': [
        [0, 1, 1],
        [1, null, null],
        [2, 1.2, 1.1],
      ],
    },
    events: [{ event: 'release', timeS: 0.01, uS: null }],
    measures: [],
    note: '',
  };

  test('becomes a trial, tells of missing frames, is kept itself, and is one step of undo', async () => {
    const request = { caseId, fileName: 'throw.json', text: JSON.stringify(trial) };
    const { trialId, warnings, edits } = await made.ask('trial.import', request);
    expect(edits.undo).toBe('trial added');
    expect(warnings).toContain('wrist-right missing in 1 of 3 frames');
    const opened = (await made.ask('case.open', { caseId })).file;
    expect(opened.movementTrials).toMatchObject([{ id: trialId, label: 'third throw' }]);
    expect(opened.landmarkTracks).toMatchObject([
      {
        trialId,
        samples: [
          [0, 1, 1],
          [2, 1.2, 1.1],
        ],
      },
    ]);
    expect(opened.trialEvents).toMatchObject([{ trialId, event: 'release' }]);
    expect(opened.media).toMatchObject([{ fileName: 'throw.json' }]);
    await made.ask('case.undo', { caseId });
    const undone = (await made.ask('case.open', { caseId })).file;
    expect([undone.movementTrials, undone.landmarkTracks, undone.trialEvents]).toEqual([[], [], []]);
  });

  test.each([
    ['{', null],
    ['{}', 'format'],
    [
      JSON.stringify({
        ...trial,
        points: {
          'wrist-right': [
            [1, 0, 0],
            [1, 0, 0],
          ],
        },
      }),
      'points.wrist-right.1',
    ],
    [JSON.stringify({ ...trial, captureRateHz: -1 }), 'captureRateHz'],
    [
      JSON.stringify({ ...trial, measures: [{ measure: 'arm.elevation', value: 130, unit: 'cm' }] }),
      'measures.0.unit',
      'unit-mismatch',
    ],
  ])('%.20s is refused at the place of the fault', async (bad, where, code = 'input-malformed') => {
    const error = await made.refusal('trial.import', { caseId, fileName: 'throw.json', text: bad });
    expect(error).toMatchObject({ code, path: where });
    expect((await made.ask('case.open', { caseId })).file.revision).toBe(1);
  });
});

/** Three markers in 30 frames, seen or (−1) not. */
const c3d = (fourth: number) =>
  Buffer.from(
    writeC3d({
      order: 'intel',
      isReal: true,
      points: 3,
      channels: 0,
      samplesPerFrame: 0,
      scale: 1,
      frames: Array.from({ length: 30 }, (_, i) => [i, 0, 1500, fourth, i, 5, 500, fourth, i, 0, 20, fourth]),
      parameters: [
        ['POINT', 'RATE', 'real', [], [200]],
        ['POINT', 'LABELS', 'text', [9, 3], ['Tova:LSHO', 'Tova:LKNE', 'Tova:M3']],
        ['POINT', 'UNITS', 'text', [2, 1], ['mm']],
      ],
    }),
  ).toString('base64');

describe('markers of a C3D file', () => {
  const file = { fileName: 'walk.c3d', base64: c3d(0), reading: null };
  const how = { movementId: 'countermovement-jump', side: 'none', filmedOn: TODAY, pointUM: 0.002 } as const;

  test('looked over, put right, taken in as one step of undo, with the file; the next is read alike, without the name', async () => {
    const before = await made.ask('trial.previewMarkers', { file });
    expect(before).toMatchObject({ frames: 30, rateHz: 200, units: 'mm', isRemembered: false, open: null });
    expect(before.markers).toEqual(['LSHO', 'LKNE', 'M3'].map((label) => ({ label: `Tova:${label}`, framesSeen: 30 })));
    expect(before.reading.points).toEqual(['shoulder-left', 'knee-left', null]);
    expect(before.words.join(' ')).toContain('is left out');

    const reading = { ...before.reading, points: ['shoulder-left', 'knee-left', 'heel-left'] };
    const { trialId, warnings, edits } = await made.ask('trial.importMarkers', {
      caseId,
      file: { ...file, reading },
      ...how,
    });
    expect(edits.undo).toBe('trial added');
    const opened = (await made.ask('case.open', { caseId })).file;
    expect(opened.movementTrials).toMatchObject([
      {
        id: trialId,
        captureRateHz: 200,
        calibration: { kind: 'metres', pointUM: 0.002 },
        note: warnings.join('\n'),
      },
    ]);
    expect(opened.landmarkTracks.map(({ point }) => point)).toEqual(reading.points);
    expect(opened.landmarkTracks[2]?.samples[1]).toEqual([1, expect.any(Number), 0.02]);
    expect(opened.media).toMatchObject([{ fileName: 'walk.c3d' }]);

    const { mappings } = await made.ask('mapping.list', {});
    expect(mappings).toEqual([
      { door: 'markers', heads: ['LSHO', 'LKNE', 'M3'], mapping: reading, usedAt: expect.any(String) },
    ]);
    const again = await made.ask('trial.previewMarkers', { file });
    expect([again.isRemembered, again.reading]).toEqual([true, reading]);
    const [kept] = mappings;
    if (kept === undefined) return;
    await made.ask('mapping.forget', { door: kept.door, heads: kept.heads });
    expect((await made.ask('mapping.list', {})).mappings).toEqual([]);
    expect((await made.ask('trial.previewMarkers', { file })).isRemembered).toBe(false);
    await made.ask('mapping.putBack', kept);
    expect((await made.ask('mapping.list', {})).mappings).toEqual(mappings);

    await made.ask('case.undo', { caseId });
    const undone = (await made.ask('case.open', { caseId })).file;
    expect([undone.movementTrials, undone.landmarkTracks]).toEqual([[], []]);
  });

  test('every place marked invalid: refused in words, before and at the door, and nothing is kept', async () => {
    const invalid = { ...file, base64: c3d(-1) };
    for (const error of [
      await made.refusal('trial.previewMarkers', { file: invalid }),
      await made.refusal('trial.importMarkers', { caseId, file: invalid, ...how }),
    ]) {
      expect(error).toMatchObject({ code: 'input-missing', message: expect.stringContaining('as not seen') });
    }
    const opened = (await made.ask('case.open', { caseId })).file;
    expect([opened.revision, opened.movementTrials, opened.media]).toEqual([1, [], []]);
    expect((await made.ask('mapping.list', {})).mappings).toEqual([]);
  });
});
