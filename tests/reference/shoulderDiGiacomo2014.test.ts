import { expect, test } from 'vitest';
import { distanceToDislocation } from '../../shared/kernel/shoulder/distanceToDislocation.ts';
import { glenoidTrack } from '../../shared/kernel/shoulder/glenoidTrack.ts';
import { lesionInterval } from '../../shared/kernel/shoulder/lesionInterval.ts';
import { measured } from '../../shared/quantity.ts';

const mm = (symbol: string, value: number) => measured(symbol, symbol, value / 1000, 'm', 0.0005);

/** Arithmetic of the published relations, done by hand. */
test.each([
  { D: 24, d: 0, w: 15, b: 4, track: 19.92, interval: 19, distance: 0.92 },
  { D: 24, d: 4, w: 15, b: 4, track: 15.92, interval: 19, distance: -3.08 },
  { D: 30, d: 6, w: 8, b: 2, track: 18.9, interval: 10, distance: 8.9 },
])('Di Giacomo 2014: track 0.83 D − d, interval w + b, distance track − interval: %j', (given) => {
  const track = glenoidTrack(mm('D', given.D), mm('d', given.d));
  const interval = lesionInterval(mm('w', given.w), mm('b', given.b));
  expect(track.value * 1000).toBeCloseTo(given.track, 9);
  expect(interval.value * 1000).toBeCloseTo(given.interval, 9);
  const distance = distanceToDislocation(track, interval);
  expect(distance.value * 1000).toBeCloseTo(given.distance, 9);
  expect(distance.u).toBeGreaterThan(0);
});
