import { expect, test } from 'vitest';
import { flightFrames } from '../../../../shared/kernel/trial/flightFrames.ts';
import { scene } from '../../../../shared/kernel/trial/scene.ts';
import type { LandmarkTrack } from '../../../../shared/model/trial.ts';
import { FRAMES, HUNDRED_PX_A_METRE, inventedTrial } from './inventedTrial.ts';

const PX_PER_M = 100;
const input = inventedTrial({
  calibration: HUNDRED_PX_A_METRE,
  toFile: (x, y) => [PX_PER_M * x, -PX_PER_M * y],
});
const ball = input.tracks.find(({ point }) => point === 'ball');
if (ball === undefined) throw new Error('no ball');
const followed = (byHand: readonly number[], own: number | null): LandmarkTrack[] => [
  { ...ball, origin: 'by-hand', samples: ball.samples.filter(([frame]) => byHand.includes(frame)) },
  {
    ...ball,
    origin: 'tracked',
    samples: ball.samples
      .filter(([frame]) => !byHand.includes(frame))
      .map(([frame, x, y]) => (own === null ? [frame, x, y] : [frame, x, y, own])),
  },
];
const sharedU = (balls: readonly LandmarkTrack[]) => {
  const view = scene({ ...input, tracks: [...input.tracks.filter(({ point }) => point !== 'ball'), ...balls] });
  if ('unknown' in view) throw new Error(view.unknown);
  const flight = flightFrames(view, 'ball');
  if ('unknown' in flight) throw new Error(flight.unknown);
  return flight.sharedU;
};

test('JCGM 100:2008, 5.1: a ball tracked from one place, 0.6 px by hand and 0.8 px its own, shares the 0.6 px of that place', () => {
  // Pooled over its samples with the one place by hand, which is none but its own.
  const frames = ball.samples.length;
  const pooled = 0.6 ** 2 + ((frames - 1) / frames) * 0.8 ** 2;
  expect(sharedU(followed([FRAMES.release - 5], 0.8))).toBeCloseTo(Math.sqrt(pooled - 0.8 ** 2) / PX_PER_M, 12);
});

test('law: put right by hand on its way, or tracked with nothing said of it, or put down by hand everywhere, it shares nothing', () => {
  expect(sharedU(followed([FRAMES.release + 3], 0.2))).toBeGreaterThan(0);
  expect(sharedU(followed([FRAMES.release + 3, FRAMES.release + 12], 0.2))).toBe(0);
  expect(sharedU(followed([FRAMES.release - 5], null))).toBe(0);
  expect(sharedU([{ ...ball, origin: 'by-hand' }])).toBe(0);
});
