import { expect, test } from 'vitest';
import { upwardJolt } from '../../../../shared/kernel/event/upwardJolt.ts';

/** Heights whose acceleration is a parabola 60 − (i − middle)² over `wide` samples to either side, else 0: twice integrated. */
const jolted = (middle: number, wide: number) => {
  const bends = Array.from({ length: 60 }, (_, i) => Math.max(0, wide ** 2 - (i - middle) ** 2));
  const heights = [0, 0];
  for (let i = 1; i < 59; i += 1)
    heights.push(2 * (heights[i] as number) - (heights[i - 1] as number) + (bends[i] as number));
  return heights;
};

test('closed form: an acceleration that is a parabola has its peak at its middle, between samples, and falls to half at √½ of its half width', () => {
  for (const middle of [30, 30.3, 29.6]) {
    const found = upwardJolt(jolted(middle, 10), 15, 45);
    expect(found?.index).toBeCloseTo(middle, 9);
    expect(found?.width).toBeCloseTo(2 * 10 * Math.SQRT1_2, 1);
  }
});

test('the hardest of a stretch, not of the whole; none where it only falls, or where the stretch has no peak inside', () => {
  const two = jolted(15, 5).map((y, i) => y + (jolted(40, 9)[i] as number));
  expect(upwardJolt(two, 5, 22)?.index).toBeCloseTo(15, 6);
  expect(upwardJolt(two, 5, 55)?.index).toBeCloseTo(40, 6);
  expect(
    upwardJolt(
      two.map((y) => -y),
      5,
      55,
    ),
  ).toBeNull();
  expect(upwardJolt(jolted(30, 10), 10, 25)).toBeNull();
  expect(upwardJolt(jolted(30, 10), 29, 30)).toBeNull();
});

test('refuses what is not a number, with what it needs', () => {
  expect(() => upwardJolt([0, Number.NaN, 1], 0, 2)).toThrow(/upwardJolt/);
});
