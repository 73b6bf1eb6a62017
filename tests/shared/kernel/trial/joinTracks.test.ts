import { expect, test } from 'vitest';
import { joinTracks } from '../../../../shared/kernel/trial/joinTracks.ts';
import type { LandmarkTrack } from '../../../../shared/model/trial.ts';

const id = '00000000-0000-4000-8000-000000000001';
const track = (point: string, origin: LandmarkTrack['origin'], ...frames: number[]): LandmarkTrack => ({
  id,
  trialId: id,
  point,
  origin,
  samples: frames.map((frame) => [frame, frame, origin === 'by-hand' ? 1 : 2]),
  uPx: null,
});

test('law: a point of several tracks is one point with all their frames in order, and the hand holds over the tracker', () => {
  const joined = joinTracks([
    track('ball', 'by-hand', 3, 9),
    track('hip-left', 'imported', 1),
    track('ball', 'tracked', 2, 3, 4),
  ]);
  expect(joined.map(({ point, samples }) => [point, samples])).toEqual([
    [
      'ball',
      [
        [2, 2, 2],
        [3, 3, 1],
        [4, 4, 2],
        [9, 9, 1],
      ],
    ],
    ['hip-left', [[1, 1, 2]]],
  ]);
});
