import { describe, expect, test } from 'vitest';
import { angleFromForearm } from '../../../../shared/kernel/check/angleFromForearm.ts';
import { dragIgnored } from '../../../../shared/kernel/check/dragIgnored.ts';
import { entryTakenAsRelease } from '../../../../shared/kernel/check/entryTakenAsRelease.ts';
import { fortyFiveIsBest } from '../../../../shared/kernel/check/fortyFiveIsBest.ts';
import { speedFromDistanceOverTime } from '../../../../shared/kernel/check/speedFromDistanceOverTime.ts';
import { measured, type Reading } from '../../../../shared/quantity.ts';
import type { Unit } from '../../../../shared/units.ts';

const exact = <U extends Unit>(value: number, unit: U): Reading<U> => measured('x', 'given', value, unit, 0);
const deg = (value: number) => (value * Math.PI) / 180;
const angle = (value: number) => exact(deg(value), 'rad');
const unknown = { unknown: 'not recorded' };
const about = null;
// Free throw of P1: 4.225 m away, released at 2.10 m, ring at 3.05 m.
const FREE_THROW = { distance: exact(4.225, 'm'), rise: exact(0.95, 'm') };

const askSpeedFromDistanceOverTime = (statedMPerS: number | null, speed: Reading<'m/s'> = exact(7.2, 'm/s')) =>
  speedFromDistanceOverTime({ statedMPerS, horizontal: exact(4.43276, 'm/s'), speed, about });

describe('mistake 10: release speed as distance over time (W6, computed: 7.20 m/s at 52° goes forward at 4.43 m/s)', () => {
  test('4.43 m/s is questioned', () => {
    const found = askSpeedFromDistanceOverTime(4.43);
    expect(found.verdict).toBe('questioned');
    expect(found.sentence).toContain('distance over time');
    expect(found.numbers.map(({ value }) => value)).toEqual([4.43, 7.2]);
  });
  test('7.2 m/s is fine; 6.0 m/s is neither; without a fitted flight it cannot be told', () => {
    expect(askSpeedFromDistanceOverTime(7.2).verdict).toBe('fine');
    expect(askSpeedFromDistanceOverTime(6).sentence).not.toContain('distance over time');
    expect(askSpeedFromDistanceOverTime(7.2, unknown).verdict).toBe('cannot tell');
    expect(askSpeedFromDistanceOverTime(null).verdict).toBe('cannot tell');
  });
});

const askEntryTakenAsRelease = (stated: number | null, rise: Reading<'m'> = FREE_THROW.rise) =>
  entryTakenAsRelease({
    statedEntryRad: stated === null ? null : deg(stated),
    releaseAngle: angle(52),
    distance: FREE_THROW.distance,
    rise,
    about,
  });

describe('mistake 11: entry angle taken as release angle (P1, computed: 52° at the hand is 39.701° at the ring)', () => {
  test('52° is questioned', () => {
    const found = askEntryTakenAsRelease(52);
    expect(found.verdict).toBe('questioned');
    expect((found.numbers[1]?.value ?? 0) / deg(1)).toBeCloseTo(39.701, 3);
  });
  test('39.7° is fine, and so is 52° where the target is level with the release', () => {
    expect(askEntryTakenAsRelease(39.7).verdict).toBe('fine');
    expect(askEntryTakenAsRelease(52, exact(0, 'm')).verdict).toBe('fine');
  });
  test('without the rise or an angle it cannot be told', () => {
    expect(askEntryTakenAsRelease(52, unknown).verdict).toBe('cannot tell');
    expect(askEntryTakenAsRelease(null).verdict).toBe('cannot tell');
  });
});

const askFortyFiveIsBest = (stated: number | null, d: number, rise: number) =>
  fortyFiveIsBest({
    statedBestRad: stated === null ? null : deg(stated),
    distance: exact(d, 'm'),
    rise: exact(rise, 'm'),
    about,
  });

describe('mistake 12: 45° as best (P1 and P6, computed: 51.336° for a free throw, 41.88° for a shot put of 19.219 m)', () => {
  test('45° for a free throw is questioned, too flat by 6°', () => {
    const found = askFortyFiveIsBest(45, 4.225, 0.95);
    expect(found.verdict).toBe('questioned');
    expect((found.numbers[1]?.value ?? 0) / deg(1)).toBeCloseTo(51.336, 3);
  });
  test('45° for a shot that lands 2.1 m below is questioned: 41.88°', () => {
    const found = askFortyFiveIsBest(45, 19.219, -2.1);
    expect(found.verdict).toBe('questioned');
    expect((found.numbers[1]?.value ?? 0) / deg(1)).toBeCloseTo(41.88, 2);
  });
  test('51.3° is fine, 45° is fine on the level, nothing cannot be told', () => {
    expect(askFortyFiveIsBest(51.3, 4.225, 0.95).verdict).toBe('fine');
    expect(askFortyFiveIsBest(45, 10, 0).verdict).toBe('fine');
    expect(askFortyFiveIsBest(null, 10, 0).verdict).toBe('cannot tell');
    expect(fortyFiveIsBest({ statedBestRad: 1, distance: unknown, rise: FREE_THROW.rise, about }).verdict).toBe(
      'cannot tell',
    );
  });
});

const askAngleFromForearm = (stated: number | null, flight: Reading<'rad'> = angle(52)) =>
  angleFromForearm({
    statedRad: stated === null ? null : deg(stated),
    flight,
    forearm: angle(67),
    about,
  });

describe('mistake 13: release angle read off the forearm (the path decides; six frames at least, convention)', () => {
  test('the angle of the forearm is questioned and recognised', () => {
    const found = askAngleFromForearm(67);
    expect(found.verdict).toBe('questioned');
    expect(found.sentence).toContain('where the forearm points');
    expect(found.numbers).toHaveLength(2);
  });
  test('another wrong angle is questioned without a guess; that of the path is fine', () => {
    expect(askAngleFromForearm(60).sentence).not.toContain('forearm points');
    expect(askAngleFromForearm(60).verdict).toBe('questioned');
    expect(askAngleFromForearm(52.5).verdict).toBe('fine');
  });
  test('without six frames of flight it cannot be told, and says so', () => {
    expect(askAngleFromForearm(67, { unknown: 'only 4' })).toMatchObject({ verdict: 'cannot tell' });
    expect(askAngleFromForearm(67, { unknown: 'only 4' }).sentence).toContain('6 frames');
    expect(askAngleFromForearm(null).verdict).toBe('cannot tell');
  });
});

describe('mistake 36: drag ignored (P5, computed with k 0.022941 /m: 7.1973 m/s in a vacuum, 7.5143 m/s through air)', () => {
  const k = measured('k', 'drag factor', 0.022941, '/m', 0);
  const base = { angle: angle(52), ...FREE_THROW, drag: k, isDragIncluded: false, about };
  test('the free throw is questioned: 4.4 % low', () => {
    const found = dragIgnored(base);
    expect(found.verdict).toBe('questioned');
    expect(found.numbers[0]?.value).toBeCloseTo(7.1973, 4);
    expect(found.numbers[1]?.value).toBeCloseTo(7.5143, 4);
    expect(found.sentence).toContain('4.4 %');
  });
  test('with drag it is fine, and for a shot (k 0.000467 /m) it hardly matters', () => {
    expect(dragIgnored({ ...base, isDragIncluded: true }).verdict).toBe('fine');
    const shot = measured('k', 'drag factor', 0.000467, '/m', 0);
    expect(
      dragIgnored({ ...base, angle: angle(41.88), drag: shot, distance: exact(19, 'm'), rise: exact(-2.1, 'm') })
        .verdict,
    ).toBe('fine');
  });
  test('without a ball, a target or a way there it cannot be told', () => {
    expect(dragIgnored({ ...base, drag: null }).verdict).toBe('cannot tell');
    expect(dragIgnored({ ...base, rise: unknown }).verdict).toBe('cannot tell');
    expect(dragIgnored({ ...base, angle: angle(5) }).verdict).toBe('cannot tell');
  });
});
