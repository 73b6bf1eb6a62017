import { expect, test } from 'vitest';
import { liesOn } from '../../../app/bench/liesOn.ts';
import type { LandmarkTrack } from '../../../shared/model/trial.ts';
import { EXAMPLES } from '../../conformance/examples.ts';

const track = (point: string, samples: LandmarkTrack['samples']): LandmarkTrack => ({
  ...EXAMPLES.landmarkTrack,
  point,
  samples,
});
/** A marker that stands, one that goes by with 1 px a frame, one that is 2 px beside the first throughout. */
const still = Array.from({ length: 20 }, (_, frame): [number, number, number] => [frame, 100, 50]);
const passing = still.map(([frame]): [number, number, number] => [frame, 93 + 2 * frame, 50]);
const beside = still.map(([frame]): [number, number, number] => [frame, 101.2, 51.6]);

test('closed form: 2 px away in 20 frames is one mark; passing at 2 px a frame, within 3 px in 3 frames, is not', () => {
  const tracks = [track('knee-left', still), track('knee-right', beside), track('ball', passing)];
  expect(liesOn(tracks, 'knee-left', still)).toEqual({ point: 'knee-right', frames: 20 });
  expect(liesOn([track('knee-left', still), track('ball', passing)], 'knee-left', still)).toBeNull();
  expect(liesOn([track('knee-left', still)], 'knee-left', still)).toBeNull();
});

test('only what was tracked now counts, in whatever parts the other point was obtained', () => {
  const halves = [track('knee-right', beside.slice(0, 10)), track('knee-right', beside.slice(10))];
  expect(liesOn(halves, 'knee-left', still.slice(2, 9))).toEqual({ point: 'knee-right', frames: 7 });
  expect(liesOn(halves, 'knee-left', still)).toEqual({ point: 'knee-right', frames: 20 });
});
