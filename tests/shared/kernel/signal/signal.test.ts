import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { derivative } from '../../../../shared/kernel/signal/derivative.ts';
import { fillGaps } from '../../../../shared/kernel/signal/fillGaps.ts';
import { zeroLagButterworth } from '../../../../shared/kernel/signal/zeroLagButterworth.ts';

const series = (n: number, f: (i: number) => number) => Array.from({ length: n }, (_, i) => f(i));

test('law: a constant and a straight line pass unchanged', () => {
  const constant = zeroLagButterworth(
    series(40, () => 1.7),
    60,
    6,
  );
  constant.forEach((y) => expect(y).toBeCloseTo(1.7, 10));
  const line = zeroLagButterworth(
    series(120, (i) => 2 + 0.03 * i),
    60,
    6,
  );
  line.forEach((y, i) => expect(y).toBeCloseTo(2 + 0.03 * i, 6));
});

test('law: the peak of a symmetrical hump does not move in time', () => {
  const hump = zeroLagButterworth(
    series(121, (i) => Math.exp(-(((i - 60) / 8) ** 2))),
    120,
    6,
  );
  expect(hump.indexOf(Math.max(...hump))).toBe(60);
});

test('law: filtering is linear, and the same backwards in time', () => {
  const value = fc.double({ min: -10, max: 10, noNaN: true });
  fc.assert(
    fc.property(fc.array(fc.tuple(value, value), { minLength: 8, maxLength: 60 }), value, (pairs, k) => {
      const [a, b] = [pairs.map(([p]) => p), pairs.map(([, q]) => q)];
      const [fa, fb] = [zeroLagButterworth(a, 100, 8), zeroLagButterworth(b, 100, 8)];
      const sum = zeroLagButterworth(
        a.map((x, i) => x + k * (b[i] as number)),
        100,
        8,
      );
      sum.forEach((y, i) => expect(y).toBeCloseTo((fa[i] as number) + k * (fb[i] as number), 6));
    }),
    { numRuns: 50 },
  );
});

test('law: central differences are exact for a parabola', () => {
  const [rate, g] = [240, 9.80665];
  const fall = series(20, (i) => 2 + 3 * (i / rate) - (g / 2) * (i / rate) ** 2);
  derivative(fall, rate, 2)
    .slice(1, -1)
    .forEach((a) => expect(a).toBeCloseTo(-g, 6));
  derivative(fall, rate, 1)
    .slice(1, -1)
    .forEach((v, i) => expect(v).toBeCloseTo(3 - (g * (i + 1)) / rate, 9));
  expect(derivative(fall, rate, 1)[0]).toBeNull();
});

test.each([
  [30, 0.82699, 0.91189],
  [60, 0.95493, 0.97736],
  [120, 0.98862, 0.9943],
])('transfer function of central differences: 5 Hz at %d Hz keeps %d and %d', (rate, first, second) => {
  const w = 2 * Math.PI * 5;
  const t = (i: number) => (i - 50) / rate;
  expect(
    (derivative(
      series(101, (i) => Math.sin(w * t(i))),
      rate,
      1,
    )[50] as number) / w,
  ).toBeCloseTo(first, 5);
  expect(
    (derivative(
      series(101, (i) => Math.cos(w * t(i))),
      rate,
      2,
    )[50] as number) /
      (-w * w),
  ).toBeCloseTo(second, 5);
});

test('refuses NaN, too few samples and a cut-off above half the rate, saying which', () => {
  expect(() => zeroLagButterworth([1, 2, Number.NaN, 4], 60, 6)).toThrow(/sample 2/);
  expect(() => zeroLagButterworth([1, 2], 60, 6)).toThrow(expect.objectContaining({ code: 'not-enough-data' }));
  expect(() => zeroLagButterworth([1, 2, 3, 4], 60, 30)).toThrow(/30 Hz at 60 Hz/);
  expect(() => derivative([1, 2, 3], 0, 1)).toThrow(/above 0 Hz/);
});

const height = (frame: number) => 2 + 0.05 * frame - 0.0014 * frame * frame;

test('a short gap in free flight is filled with the flight itself, and marked', () => {
  const filled = fillGaps(
    [0, 1, 2, 5, 6, 7].map((frame) => [frame, height(frame)] as const),
    3,
  );
  expect(filled.filledFrames).toEqual([3, 4]);
  expect(filled.openGaps).toEqual([]);
  expect(filled.runs).toHaveLength(1);
  filled.runs[0]?.values.forEach((value, i) => expect(value).toBeCloseTo(height(i), 12));
});

test('a long gap stays open and splits the track', () => {
  const filled = fillGaps(
    [
      [3, 1],
      [4, 2],
      [9, 5],
      [11, 6],
    ],
    2,
  );
  expect(filled.openGaps).toEqual([[5, 8]]);
  expect(filled.filledFrames).toEqual([10]);
  expect(filled.runs.map((run) => [run.firstFrame, run.values.length])).toEqual([
    [3, 2],
    [9, 3],
  ]);
  expect(filled.runs[1]?.values[1]).toBeCloseTo(5.5, 12);
});

test('nothing is made up at the ends of a track', () => {
  expect(
    fillGaps(
      [
        [5, 1],
        [6, 1],
      ],
      10,
    ).runs[0]?.firstFrame,
  ).toBe(5);
  expect(fillGaps([], 10).runs).toEqual([]);
});

test('refuses frames out of order', () => {
  expect(() =>
    fillGaps(
      [
        [4, 1],
        [4, 2],
      ],
      2,
    ),
  ).toThrow(/rising order/);
});
