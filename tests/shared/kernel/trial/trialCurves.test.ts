import { expect, test } from 'vitest';
import { betweenId, curveChoices, trialCurve } from '../../../../shared/kernel/trial/trialCurves.ts';
import { scene, type Scene } from '../../../../shared/kernel/trial/scene.ts';
import { basketballJumpShot } from '../../../../shared/knowledge/movements/basketball-jump-shot.ts';
import type { LandmarkTrack } from '../../../../shared/model/trial.ts';
import { inventedTrial } from './inventedTrial.ts';

const RATE = 100;

/** Points that move as told, metres, at 100 Hz for 100 frames. */
function moving(paths: Readonly<Record<string, (t: number) => readonly [number, number]>>): Scene {
  const base = inventedTrial();
  const tracks = Object.entries(paths).map(
    ([point, at]): LandmarkTrack => ({
      id: base.trial.id,
      trialId: base.trial.id,
      point,
      origin: 'by-hand',
      uPx: null,
      samples: Array.from({ length: 100 }, (_, frame) => [frame, ...at(frame / RATE)]),
    }),
  );
  const trial = { ...base.trial, captureRateHz: RATE, calibration: { kind: 'metres', pointUM: 0.004 } as const };
  const view = scene({ ...base, movement: basketballJumpShot, trial, tracks, events: [] });
  if ('unknown' in view) throw new Error(view.unknown);
  return view;
}

test('definition: a point at 3 m/s forward and 4 m/s up moves at 5 m/s, raw and filtered', () => {
  const view = moving({ ball: (t) => [3 * t, 1 + 4 * t] });
  const curve = trialCurve(view, 'speed:ball');
  for (const points of [curve?.raw ?? [], curve?.filtered ?? []]) {
    expect(points).toHaveLength(98);
    const middle = points.filter(([t]) => t > 0.3 && t < 0.7).map(([, v]) => v);
    for (const v of middle) expect(v).toBeCloseTo(5, 2);
  }
  expect(trialCurve(view, 'height:ball')?.raw[50]?.[1]).toBeCloseTo(3, 9);
});

test('plane geometry: the angle between any three points is the one they make', () => {
  const view = moving({ a: () => [1, 0], b: () => [0, 0], c: (t) => [Math.cos(t), Math.sin(t)] });
  const curve = trialCurve(view, betweenId('a', 'b', 'c'));
  for (const [t, rad] of curve?.raw ?? []) expect(rad).toBeCloseTo(t, 9);
});

// Away from the ends, where any filter has only one side to go by.
const spread = (points: readonly (readonly [number, number])[]) => {
  const heights = points.filter(([t]) => t > 0.2 && t < 0.8).map(([, y]) => y);
  return Math.max(...heights) - Math.min(...heights);
};

test('law: what the filter takes out of a shaking point is in the raw curve and not in the other', () => {
  const view = moving({ ball: (t) => [0, 1 + 0.01 * Math.cos(2 * Math.PI * 45 * t)] });
  const curve = trialCurve(view, 'height:ball');
  expect(spread(curve?.raw ?? [])).toBeGreaterThan(0.015);
  expect(spread(curve?.filtered ?? [])).toBeLessThan(0.005);
});

test('every curve offered can be drawn; what is not there is null', () => {
  const view = scene(inventedTrial());
  if ('unknown' in view) throw new Error(view.unknown);
  const choices = curveChoices(view);
  expect(choices.map(({ id }) => id)).toEqual(
    expect.arrayContaining(['angle:trunk.lean', 'height:centre-of-mass', 'speed:ball', 'rising:']),
  );
  for (const { id } of choices) expect(trialCurve(view, id)?.filtered.length, id).toBeGreaterThan(2);
  expect(trialCurve(view, 'speed:tail')).toBeNull();
  expect(trialCurve(view, 'between:a:b')).toBeNull();
});
