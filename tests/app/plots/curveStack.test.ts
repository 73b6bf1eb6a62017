import { expect, test } from 'vitest';
import { nearest, runsOf } from '../../../app/plots/CurveStack.tsx';

test('a gap of more than one and a half steps is not drawn across', () => {
  const points = [0, 1, 2, 4, 5].map((t) => [t, t] as const);
  expect(runsOf(points).map((run) => run.map(([t]) => t))).toEqual([
    [0, 1, 2],
    [4, 5],
  ]);
});

test('the nearest sample is found wherever it is, and none where none is near', () => {
  const points = Array.from({ length: 101 }, (_, i) => [i / 100, i] as const);
  for (const t of [0, 0.004, 0.006, 0.5, 0.994, 1]) expect(nearest(points, t)?.[1]).toBe(Math.round(t * 100));
  expect(nearest(points, 1.2)).toBeNull();
  expect(nearest([], 0)).toBeNull();
});
