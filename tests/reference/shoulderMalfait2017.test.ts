import { expect, test } from 'vitest';
import { hyperlaxityCutoff } from '../../shared/kernel/shoulder/hyperlaxityCutoff.ts';
import { hyperlaxityScore } from '../../shared/kernel/shoulder/hyperlaxityScore.ts';
import { LAXITY_SIGNS, type LaxitySign } from '../../shared/model/shoulder.ts';

test.each([
  [9, true, 6],
  [15, false, 5],
  [15, null, null],
  [18, null, 5],
  [50, null, 5],
  [51, null, 4],
] as const)(
  'Malfait 2017: 6 before puberty, 5 from puberty to 50, 4 above 50: at %d years %s the cut-off is %s',
  (age, isPrepubertal, expected) => {
    expect(hyperlaxityCutoff(age, isPrepubertal)).toBe(expected);
  },
);

test.each([-1, 121, Number.NaN])('an age of %d is refused', (age) => {
  expect(() => hyperlaxityCutoff(age, null)).toThrow('hyperlaxityCutoff');
});

const answers = (yes: readonly LaxitySign[], open: readonly LaxitySign[] = []) =>
  Object.fromEntries(LAXITY_SIGNS.map((sign) => [sign, open.includes(sign) ? null : yes.includes(sign)])) as Record<
    LaxitySign,
    boolean | null
  >;

test('the nine-point score of Malfait 2017: a point a sign, nine at most, none while one is open', () => {
  expect(hyperlaxityScore(answers(LAXITY_SIGNS)).points).toBe(9);
  expect(hyperlaxityScore(answers([])).points).toBe(0);
  expect(hyperlaxityScore(answers(['thumbLeft', 'palmsToFloor', 'kneeRight'])).points).toBe(3);
  expect(hyperlaxityScore(answers(LAXITY_SIGNS, ['elbowLeft']))).toEqual({ points: null, missing: ['elbowLeft'] });
});
