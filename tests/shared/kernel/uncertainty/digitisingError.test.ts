import { expect, test } from 'vitest';
import { digitisingError } from '../../../../shared/kernel/uncertainty/digitisingError.ts';
import { pointUncertainty } from '../../../../shared/kernel/trial/pointUncertainty.ts';
import { seededRandom } from '../../../../shared/kernel/uncertainty/seededRandom.ts';
import { EXAMPLES, id } from '../../../conformance/examples.ts';

const twice = (...pairs: [number, number, number, number][]) =>
  pairs.map(([x, y, u, v]) => ({ first: { xPx: x, yPx: y }, again: { xPx: u, yPx: v } }));

test('by hand from the definition, Dahlberg 1940 (from memory): differences 1, −1, 2, 0, −2, 2 give √(14/12) = 1.0801 px', () => {
  const { value, unit } = digitisingError(twice([0, 0, 1, -1], [5, 5, 7, 5], [9, 9, 7, 11]));
  expect(value).toBeCloseTo(Math.sqrt(14 / 12), 12);
  expect(unit).toBe('{px}');
});

test('law: from many points put down with a normal error of 1.5 px, 1.5 px within three of the uncertainty stated', () => {
  const random = seededRandom(8);
  // Box and Muller 1958: two normal deviates from two uniform ones.
  const normal = () => 1.5 * Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const pairs = Array.from(
    { length: 400 },
    () => [normal(), normal(), normal(), normal()] as [number, number, number, number],
  );
  const { value, u } = digitisingError(twice(...pairs));
  expect(Math.abs(value - 1.5)).toBeLessThan(3 * (u ?? 0));
});

test('two repeats are too few, and it says how many it needs', () => {
  expect(() => digitisingError(twice([0, 0, 1, 1], [0, 0, 1, 1]))).toThrow(/at least 3 points put down twice, got 2/);
});

const trial = EXAMPLES.movementTrial;
const track = (origin: 'by-hand' | 'suggested-and-confirmed', uPx: number | null) => ({
  ...EXAMPLES.landmarkTrack,
  origin,
  uPx,
});
const repeats = twice([0, 0, 2, 0], [0, 0, 0, 2], [0, 0, 2, 0]).map((pair, i) => ({
  ...EXAMPLES.pointRepeat,
  id: id(700 + i),
  ...pair,
}));

test('from three repeats on, the own error holds in place of the one entered; it is said in words', () => {
  expect(pointUncertainty(trial, [track('by-hand', null)], []).bodyUPx).toBe(1.5);
  const own = pointUncertainty(trial, [track('by-hand', null)], repeats);
  // √(12 / 12)
  expect(own.bodyUPx).toBeCloseTo(1, 12);
  expect(own.said.join(' ')).toMatch(/2 by hand.*the person’s own error, from 3.points put down twice/);
});

test('law: pooled over origins as the root mean square: two samples of 1.5 px and two of 12 px give √((1.5² + 12²)/2)', () => {
  const both = pointUncertainty(trial, [track('by-hand', null), track('suggested-and-confirmed', 12)], []);
  expect(both.bodyUPx).toBeCloseTo(Math.sqrt((1.5 ** 2 + 12 ** 2) / 2), 12);
  expect(both.said[0]).toMatch(/2 suggested by a landmark model and confirmed by a person.*12.0 px/);
});
