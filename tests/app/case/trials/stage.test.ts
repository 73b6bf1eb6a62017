import { expect, test } from 'vitest';
import { metresPerUnit, stageOf } from '../../../../app/case/trials/stage.ts';
import type { LandmarkTrack } from '../../../../shared/model/trial.ts';

const track = (point: string, samples: LandmarkTrack['samples']): LandmarkTrack => ({
  id: '00000000-0000-4000-8000-000000000001',
  trialId: '00000000-0000-4000-8000-000000000002',
  point,
  origin: 'imported',
  samples,
  uPx: null,
});

test('a frame in which a point was not seen lacks that point and no other', () => {
  const stage = stageOf([
    track('vertex', [
      [0, 1, 1.8],
      [1, 1.1, 1.8],
    ]),
    track('toe-left', [[1, 1, 0]]),
  ]);
  expect([...(stage?.at(0).keys() ?? [])]).toEqual(['vertex']);
  expect([...(stage?.at(1).keys() ?? [])]).toEqual(['vertex', 'toe-left']);
  expect([stage?.firstFrame, stage?.lastFrame]).toEqual([0, 1]);
});

test('law: the body is always in the picture, a ball that flies off only as far as the picture reaches', () => {
  const stage = stageOf([
    track('vertex', [[0, 1, 1.8]]),
    track('toe-left', [[0, 1, 0]]),
    track('ball', [
      [0, 1, 2],
      [90, 40, 1],
    ]),
  ]);
  expect(stage?.bounds.minY).toBeLessThanOrEqual(0);
  expect(stage?.bounds.maxY).toBeGreaterThanOrEqual(2);
  expect(stage?.bounds.maxX).toBeGreaterThan(1);
  expect(stage?.bounds.maxX).toBeLessThan(40);
});

test('nothing digitised is nothing to draw', () => {
  expect(stageOf([])).toBeNull();
  expect(stageOf([track('vertex', [])])).toBeNull();
});

test('law: 300 pixels that are 1.5 m long make 5 mm a pixel', () => {
  const length = {
    kind: 'length',
    from: { xPx: 100, yPx: 50 },
    to: { xPx: 280, yPx: 290 },
    lengthM: 1.5,
    lengthUM: 0.002,
    pointUPx: null,
    tiltDeg: 0,
  } as const;
  expect(metresPerUnit(length)).toBeCloseTo(0.005, 12);
  expect(metresPerUnit({ kind: 'metres', pointUM: null })).toBe(1);
  expect(metresPerUnit(null)).toBeNull();
});
