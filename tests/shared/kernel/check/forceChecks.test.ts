import { describe, expect, test } from 'vitest';
import { bentLanding } from '../../../../shared/kernel/check/bentLanding.ts';
import { bodyWeightNotSubtracted } from '../../../../shared/kernel/check/bodyWeightNotSubtracted.ts';
import { heightWithoutTheEighth } from '../../../../shared/kernel/check/heightWithoutTheEighth.ts';
import { peakVelocityAsTakeoff } from '../../../../shared/kernel/check/peakVelocityAsTakeoff.ts';
import { reachInOtherShoes } from '../../../../shared/kernel/check/reachInOtherShoes.ts';
import { thresholdInNoise } from '../../../../shared/kernel/check/thresholdInNoise.ts';
import { measured, type Reading } from '../../../../shared/quantity.ts';
import type { Unit } from '../../../../shared/units.ts';

const exact = <U extends Unit>(value: number, unit: U): Reading<U> => measured('x', 'given', value, unit, 0);
const unknown = { unknown: 'not recorded' };
const about = null;

const askBodyWeightNotSubtracted = (v: number | null, integratedS: number | null = 0.66) =>
  bodyWeightNotSubtracted({ takeoffVelocityMPerS: v, integratedS, about });

describe('mistake 6: body weight left in the integral (J8, computed: 638.32 N·s over 0.660 s for 70 kg)', () => {
  test('9.119 m/s is questioned, and 2.6465 m/s is what should have come out', () => {
    const found = askBodyWeightNotSubtracted(9.119);
    expect(found.verdict).toBe('questioned');
    expect(found.numbers[0]?.value).toBe(9.119);
    expect(found.numbers[1]?.value).toBeCloseTo(2.6465, 3);
    expect(found.sentence).toContain('4.2 m');
  });
  test('without the duration the limit stands in for the right answer', () => {
    expect(askBodyWeightNotSubtracted(9.119, null).numbers[1]?.value).toBe(4);
  });
  test('2.65 m/s is fine; nothing cannot be told', () => {
    expect(askBodyWeightNotSubtracted(2.6465).verdict).toBe('fine');
    expect(askBodyWeightNotSubtracted(null)).toMatchObject({ verdict: 'cannot tell', numbers: [] });
  });
});

describe('mistake 7: highest velocity as take-off velocity (J9, open 600 Hz record: 2.3011 against 2.1647 m/s)', () => {
  const takeoff = measured('v', 'take-off velocity', 2.1647, 'm/s', 0.02);
  const ask = (statedMPerS: number | null, peakMPerS: number | null, v: Reading<'m/s'> = takeoff) =>
    peakVelocityAsTakeoff({ statedMPerS, takeoff: v, peakMPerS, about });
  test('questioned, with the 13 % that the height comes out too high', () => {
    const found = ask(2.3011, 2.3011);
    expect(found.verdict).toBe('questioned');
    expect(found.numbers.map(({ value }) => value)).toEqual([2.3011, 2.1647]);
    expect(found.sentence).toContain('13 %');
    expect(ask(2.3011, null).sentence).toContain('looks like');
  });
  test('the velocity of last contact is fine; one that is neither is questioned without a guess', () => {
    expect(ask(2.16, 2.3011).verdict).toBe('fine');
    expect(ask(3.1, 2.3011).sentence).not.toContain('highest');
  });
  test('cannot tell without a velocity or a force record', () => {
    expect(ask(null, null).verdict).toBe('cannot tell');
    expect(ask(2.3, null, unknown).verdict).toBe('cannot tell');
  });
});

const askHeightWithoutTheEighth = (statedHeightM: number | null, flightTimeS: number | null) =>
  heightWithoutTheEighth({ statedHeightM, flightTimeS, about });

describe('mistake 8: h = g t²/2 (J1, computed: 0.500 s is 0.30646 m, four times that is 1.226 m)', () => {
  test('1.226 m is questioned as exactly four times too much', () => {
    const found = askHeightWithoutTheEighth(1.226, 0.5);
    expect(found.verdict).toBe('questioned');
    expect(found.sentence).toContain('four times');
    expect(found.numbers[1]?.value).toBeCloseTo(0.30646, 5);
  });
  test('0.306 m is fine; 0.40 m belongs to another time; nothing cannot be told', () => {
    expect(askHeightWithoutTheEighth(0.306, 0.5).verdict).toBe('fine');
    expect(askHeightWithoutTheEighth(0.4, 0.5).verdict).toBe('questioned');
    expect(askHeightWithoutTheEighth(0.4, 0.5).sentence).not.toContain('four times');
    expect(askHeightWithoutTheEighth(0.4, null).verdict).toBe('cannot tell');
    expect(askHeightWithoutTheEighth(null, 0.5).verdict).toBe('cannot tell');
  });
});

const radOf9 = (deg: number) => exact((deg * Math.PI) / 180, 'rad');

describe('mistake 9: a landing more bent than the take-off (J4, computed: landing 0.053 m lower reads 0.0261 m too high)', () => {
  const none = { kneeAtTakeoff: unknown, kneeAtLanding: unknown, byFlightTime: unknown, byImpulse: unknown, about };
  test('heights of one jump 5 cm apart are questioned, with the sinking that explains them', () => {
    const found = bentLanding({ ...none, byFlightTime: exact(0.45, 'm'), byImpulse: exact(0.4, 'm') });
    expect(found.verdict).toBe('questioned');
    expect(found.sentence).toContain('about 10 cm lower');
    expect(found.numbers.map(({ value }) => value)).toEqual([0.45, 0.4]);
  });
  test('knees 25° further bent are questioned', () => {
    expect(bentLanding({ ...none, kneeAtTakeoff: radOf9(5), kneeAtLanding: radOf9(30) }).verdict).toBe('questioned');
  });
  test('alike is fine; too uncertain, or nothing, cannot be told', () => {
    expect(bentLanding({ ...none, kneeAtTakeoff: radOf9(5), kneeAtLanding: radOf9(9) }).verdict).toBe('fine');
    expect(bentLanding({ ...none, byFlightTime: exact(0.41, 'm'), byImpulse: exact(0.4, 'm') }).verdict).toBe('fine');
    const vague = measured('k', 'knee', (20 * Math.PI) / 180, 'rad', 0.2);
    expect(bentLanding({ ...none, kneeAtTakeoff: radOf9(5), kneeAtLanding: vague }).verdict).toBe('cannot tell');
    expect(bentLanding(none)).toMatchObject({ verdict: 'cannot tell', numbers: [] });
  });
});

const askThresholdInNoise = (thresholdN: number | null, unloadedMeanN: number | null = 5.8) =>
  thresholdInNoise({ thresholdN, unloadedMeanN, unloadedSdN: 5.8, about });

describe('mistake 32: a take-off threshold inside the noise (J9, open 600 Hz record: empty plate 5.8 ± 5.8 N)', () => {
  test.each([10, 15])('%d N breaks the flight up', (threshold) => {
    const found = askThresholdInNoise(threshold);
    expect(found.verdict).toBe('questioned');
    expect(found.numbers[1]?.value).toBeCloseTo(34.8, 6);
  });
  test('mean + 5 SD is fine; an unknown plate or threshold cannot be told', () => {
    expect(askThresholdInNoise(35).verdict).toBe('fine');
    expect(askThresholdInNoise(20, null).verdict).toBe('cannot tell');
    expect(askThresholdInNoise(null).verdict).toBe('cannot tell');
  });
});

const ofOf34 = (label: string, standingReachM: number | null, hasShoes: boolean | null) => ({
  label,
  standingReachM,
  hasShoes,
});

describe('mistake 34: standing reach in other shoes (definition of the test: both in the same footwear)', () => {
  test('one reach for a jump in shoes and one without is questioned', () => {
    const found = reachInOtherShoes({
      test: ofOf34('today', 2.31, true),
      others: [ofOf34('spring', 2.31, false)],
      about,
    });
    expect(found).toMatchObject({ verdict: 'questioned', numbers: [{ value: 2.31 }, { value: 2.31 }] });
  });
  test('a reach of its own is fine; footwear or reach not recorded cannot be told', () => {
    const ask = (test: ReturnType<typeof ofOf34>) =>
      reachInOtherShoes({ test, others: [ofOf34('spring', 2.28, false)], about }).verdict;
    expect(ask(ofOf34('today', 2.31, true))).toBe('fine');
    expect(ask(ofOf34('today', 2.31, null))).toBe('cannot tell');
    expect(ask(ofOf34('today', null, true))).toBe('cannot tell');
  });
});
