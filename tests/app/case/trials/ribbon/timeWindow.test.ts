import { expect, test } from 'vitest';
import { following, panned, zoomed } from '../../../../../app/case/trials/ribbon/timeWindow.ts';

const ALL = { fromS: 0, toS: 10 };

test('law: the instant zoomed around keeps its place on screen', () => {
  const next = zoomed(ALL, ALL, 0.5, 3, null);
  expect((3 - next.fromS) / (next.toS - next.fromS)).toBeCloseTo(0.3, 12);
  expect(next.toS - next.fromS).toBeCloseTo(5, 12);
});

test('never wider than all there is, and never less than five frames', () => {
  expect(zoomed({ fromS: 2, toS: 4 }, ALL, 100, 3, 240)).toEqual(ALL);
  const least = zoomed({ fromS: 2, toS: 4 }, ALL, 1e-9, 3, 100);
  expect(least.toS - least.fromS).toBeCloseTo(0.05, 12);
});

test('moved along, it stops at either end and keeps its width', () => {
  const shown = { fromS: 4, toS: 6 };
  expect(panned(shown, ALL, 0.5)).toEqual({ fromS: 5, toS: 7 });
  expect(panned(shown, ALL, 9)).toEqual({ fromS: 8, toS: 10 });
  expect(panned(shown, ALL, -9)).toEqual({ fromS: 0, toS: 2 });
});

test('it follows the playhead no further than needed', () => {
  const shown = { fromS: 4, toS: 6 };
  expect(following(shown, ALL, 5)).toBe(shown);
  expect(following(shown, ALL, 6.5)).toEqual({ fromS: 4.5, toS: 6.5 });
  expect(following(shown, ALL, 1)).toEqual({ fromS: 1, toS: 3 });
});
