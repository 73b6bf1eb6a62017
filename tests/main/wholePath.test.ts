import fs from 'node:fs';
import { expect, test } from 'vitest';
import { standardGravity } from '../../shared/kernel/constants/standardGravity.ts';
import type { Edit } from '../../shared/model/edit.ts';
import { EXAMPLES, id } from '../conformance/examples.ts';
import { aService, TODAY } from './handlers/aService.ts';

const G = standardGravity.value;
const W = 70 * G;

/** 70 kg, 1 s still, a half sine down of 350 N over 0.30 s, a half sine up of 1100 N over 0.36 s, flight, a soft landing. */
function forceN(t: number): number {
  const flightS = 0.53974;
  const landingS = 1.66 + flightS;
  if (t <= 1) return W;
  if (t <= 1.3) return W - 350 * Math.sin((Math.PI * (t - 1)) / 0.3);
  if (t <= 1.66) return W + 1100 * Math.sin((Math.PI * (t - 1.3)) / 0.36);
  if (t < landingS) return 0;
  const amplitude = (70 * 2.64652 * Math.PI) / (2 * 0.3);
  return t < landingS + 0.3 ? W + amplitude * Math.sin((Math.PI * (t - landingS)) / 0.3) : W;
}

const CSV = [
  'time_s,fz_N',
  ...Array.from({ length: 4000 }, (_, k) => `${(k / 1000).toFixed(3)},${forceN(k / 1000).toFixed(4)}`),
].join('\n');

const TRIAL = JSON.stringify({
  format: 'caseframe-trial',
  version: 1,
  movement: 'handball-jump-throw',
  label: 'second throw',
  filmedOn: TODAY,
  side: 'right',
  captureRateHz: 120,
  calibration: null,
  points: {
    'wrist-right': [
      [0, 1, 1],
      [1, null, null],
      [2, 1.2, 1.1],
    ],
  },
  events: [{ event: 'release', timeS: 0.01 }],
  measures: [{ measure: 'arm.elevation', phase: 'cocking', side: 'right', value: 130, unit: 'deg', u: 2 }],
});

test('one case from an empty store to a report, taken back and done again: every answer fits the contract, and the store is sound (force record J7, computed check values; 130° = 130π/180 rad, definition)', async () => {
  const made = await aService();
  const { ask } = made;
  const { caseId } = await ask('case.create', { purpose: 'study', athleteId: null, openedOn: TODAY });
  const { athlete } = (await ask('case.open', { caseId })).file;
  const edit = (...edits: Edit[]) => ask('case.edit', { caseId, edits });

  const { massKg, statureM, name } = EXAMPLES.athlete;
  await edit({ op: 'patch', kind: 'athlete', id: athlete.id, fields: { massKg, statureM, name } });
  await edit({ op: 'create', kind: 'injury', record: { ...EXAMPLES.injury, athleteId: athlete.id } });
  await edit(
    { op: 'create', kind: 'screeningSession', record: { ...EXAMPLES.screeningSession, caseId } },
    { op: 'create', kind: 'screeningResult', record: EXAMPLES.screeningResult },
  );
  await edit(
    { op: 'create', kind: 'jumpTest', record: { ...EXAMPLES.jumpTest, caseId } },
    { op: 'create', kind: 'jumpTrial', record: { ...EXAMPLES.jumpTrial, force: null, mediaSha256: null } },
  );

  const onPlate = { ...EXAMPLES.jumpTest, id: id(60), caseId, method: 'force-plate' as const };
  await edit({ op: 'create', kind: 'jumpTest', record: onPlate });
  const file = { fileName: 'jump.csv', text: CSV, columns: [], rateHz: null, massKg: null };
  const {
    summaries: [summary],
  } = await ask('jump.previewForce', { kind: 'countermovement', file });
  expect(summary?.massKg.value).toBeCloseTo(70, 4);
  expect(summary?.peakForceN.value).toBeCloseTo(1786.47, 1);
  // Force drops to nothing between two samples at take-off: the body loses up to g Δt there.
  expect(Math.abs((summary?.takeoffVelocityMPerS.value ?? 0) - 2.64652)).toBeLessThanOrEqual(G / 1000);
  expect(Math.abs((summary?.jumpHeightM.value ?? 0) - 0.35711)).toBeLessThanOrEqual(2.64652 / 1000);
  const { jumpTrialId } = await ask('jump.importForce', { caseId, testId: onPlate.id, file });
  expect((await ask('jump.trace', { caseId, jumpTrialId })).columns).toEqual(['fz_N']);

  const { warnings } = await ask('trial.import', { caseId, fileName: 'throw.json', text: TRIAL });
  expect(warnings).toContain('wrist-right missing in 1 of 3 frames');

  const entered = await ask('case.open', { caseId });
  expect(entered.file.jumpTrials.map(({ force }) => force)).toEqual([null, summary]);
  expect(entered.file.enteredMeasures[0]?.valueSi).toBeCloseTo((130 * Math.PI) / 180, 12);

  const { report } = await ask('report.preview', { caseId, kind: 'study', paper: 'a4' });
  expect(report).toHaveProperty('pages');
  const first = await ask('report.make', { caseId, kind: 'study', paper: 'a4' });
  made.wait(24 * 60 * 60 * 1000);
  const second = await ask('report.make', { caseId, kind: 'study', paper: 'a4' });
  expect(second.pdfSha256).toBe(first.pdfSha256);
  expect(
    fs
      .readFileSync(made.service.mediaFile(first.pdfSha256) ?? '')
      .subarray(0, 5)
      .toString(),
  ).toBe('%PDF-');

  const { reports, media } = (await ask('case.open', { caseId })).file;
  expect([reports.length, media.length]).toEqual([2, 4]);
  let steps = 0;
  while ((await ask('case.undo', { caseId })).undo !== null) steps++;
  const empty = (await ask('case.open', { caseId })).file;
  expect(empty).toMatchObject({ athlete, injuries: [], jumpTests: [], movementTrials: [], reports, media });
  for (; steps >= 0; steps--) await ask('case.redo', { caseId });
  const again = (await ask('case.open', { caseId })).file;
  expect({ ...again, revision: 0 }).toEqual({ ...entered.file, revision: 0, reports, media });
  expect((await ask('report.make', { caseId, kind: 'study', paper: 'a4' })).pdfSha256).toBe(first.pdfSha256);
  expect((await ask('case.history', { caseId, limit: 1000 })).changes.every(({ isUndone }) => !isUndone)).toBe(true);
  expect(await ask('store.verify', {})).toEqual({ problems: [] });
  await made.dispose();
});
