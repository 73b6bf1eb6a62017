import { expect, test } from 'vitest';
import { pointUncertainty } from '../../../../shared/kernel/trial/pointUncertainty.ts';
import { landmarkTrack, type LandmarkTrack } from '../../../../shared/model/trial.ts';
import { EXAMPLES, id } from '../../../conformance/examples.ts';
import { HUNDRED_PX_A_METRE } from './inventedTrial.ts';

const trial = { calibration: HUNDRED_PX_A_METRE };
const ball = (origin: LandmarkTrack['origin'], samples: LandmarkTrack['samples']): LandmarkTrack => ({
  ...EXAMPLES.landmarkTrack,
  id: id(1),
  point: 'ball',
  origin,
  samples,
  uPx: null,
});

test('JCGM 100:2008, 5.1: a tracked point has the variance of where it was put down by hand and its own, 0.6² + 0.8² = 1²', () => {
  const tracked = ball('tracked', [
    [1, 10, 10, 0.8],
    [2, 11, 10, 0.8],
  ]);
  const { ballUPx, said } = pointUncertainty(trial, [tracked], []);
  expect(ballUPx).toBeCloseTo(1, 12);
  expect(said.join(' ')).toContain('u = 0.80 px a coordinate beside that of the place put down by hand');
});

test('law: pooled over samples by variance; points tracked before they had an uncertainty of their own count as by hand', () => {
  const tracks = [ball('by-hand', [[0, 9, 10]]), ball('tracked', [[1, 10, 10, 0.8]])];
  expect(pointUncertainty(trial, tracks, []).ballUPx).toBeCloseTo(Math.sqrt((0.36 + 1) / 2), 12);
  const { ballUPx, said } = pointUncertainty(trial, [ball('tracked', [[1, 10, 10]])], []);
  expect(ballUPx).toBeCloseTo(0.6, 12);
  expect(said).toEqual(['Points: 1 tracked by template matching.']);
});

test('law: where that of a person is not known, that of a tracked point is not known either', () => {
  const unknown = { calibration: { ...trial.calibration, pointUPx: null } };
  expect(pointUncertainty(unknown, [ball('tracked', [[1, 10, 10, 0.8]])], []).ballUPx).toBeNull();
});

const isKept = (sample: number[]) => landmarkTrack.safeParse({ ...EXAMPLES.landmarkTrack, samples: [sample] }).success;

test('a sample is kept with its uncertainty or without; a negative one and a fifth figure are refused', () => {
  expect(
    [
      [0, 1, 2],
      [0, 1, 2, 0.3],
      [0, 1, 2, -0.3],
      [0, 1, 2, 0.3, 1],
      [0, 1],
    ].map(isKept),
  ).toEqual([true, true, false, false, false]);
});
