import { expect, test } from 'vitest';
import { impossibleRelease } from '../../../../shared/kernel/check/impossibleRelease.ts';
import { releaseAngleWithoutTarget } from '../../../../shared/kernel/check/releaseAngleWithoutTarget.ts';
import { slowedSeconds } from '../../../../shared/kernel/check/slowedSeconds.ts';
import { entryAngle } from '../../../../shared/kernel/flight/entryAngle.ts';
import { leastSpeed } from '../../../../shared/kernel/flight/leastSpeed.ts';
import { measured } from '../../../../shared/quantity.ts';

const nothing = { flightTimeS: null, riseM: null, gravityFound: null, about: null };
const metres = (value: number) => measured('d', 'Distance', value, 'm', 0);
const speed = (value: number, u = 0.05) => measured('v', 'Release speed', value, 'm/s', u);
const angle = (deg: number) => measured('θ', 'Angle', (deg * Math.PI) / 180, 'rad', 0.01);
const gravity = (value: number, u = 0.2) => measured('g', 'Gravity found', value, 'm/s2', u);

test('free fall: 4.00 s in the air would be a jump of 19.6 m', () => {
  const check = slowedSeconds({ ...nothing, flightTimeS: 4 });
  expect(check.verdict).toBe('questioned');
  expect(check.sentence).toMatch(/19\.6 m/);
  expect(check.numbers.map(({ value }) => value)).toEqual([4, 1]);
});

test('free fall: g found 0.15323 m/s² means seconds slowed 8 times', () => {
  const check = slowedSeconds({ ...nothing, gravityFound: gravity(0.15323, 0.01) });
  expect(check.verdict).toBe('questioned');
  expect(check.sentence).toMatch(/slowed 8\.0 times/);
});

test('a rise of 1.5 m is nobody’s', () => {
  expect(slowedSeconds({ ...nothing, riseM: 1.5 }).verdict).toBe('questioned');
});

test('three answers: fine for half a second and for g as it is, cannot tell for nothing or a g too uncertain', () => {
  expect(slowedSeconds({ ...nothing, flightTimeS: 0.5 }).verdict).toBe('fine');
  expect(slowedSeconds({ ...nothing, gravityFound: gravity(9.9) }).verdict).toBe('fine');
  expect(slowedSeconds(nothing).verdict).toBe('cannot tell');
  expect(slowedSeconds({ ...nothing, gravityFound: gravity(13, 3) }).verdict).toBe('cannot tell');
  expect(slowedSeconds({ ...nothing, gravityFound: { unknown: 'no ball' } }).verdict).toBe('cannot tell');
});

test('Okazaki & Rodacki 2012: mean release 5.75 m/s from 2.38 m at 4.6 m is below the least speed, so it is questioned', () => {
  const least = leastSpeed(metres(4.6), metres(3.05 - 2.38));
  const check = impossibleRelease({
    releaseSpeed: speed(5.75),
    leastSpeed: least,
    entryAngle: angle(40),
    mustFall: true,
    about: null,
  });
  expect(check.verdict).toBe('questioned');
  expect(check.sentence).toMatch(/7\.22 m\/s/);
});

test('closed form: at 52° from 1.25 m the ball rises 4.6° at the ring', () => {
  const entry = entryAngle(metres(1.25), metres(0.85), measured('θ', 'Angle', (52 * Math.PI) / 180, 'rad', 0));
  const ring = { releaseSpeed: speed(5.19), leastSpeed: speed(4.81), entryAngle: entry, mustFall: true, about: null };
  expect(impossibleRelease(ring).sentence).toMatch(/still be rising 4\.6°/);
  expect(impossibleRelease({ ...ring, mustFall: false }).verdict).toBe('fine');
});

test('a speed a hair under the least, within its uncertainty, is not questioned; an unknown one cannot be told', () => {
  const base = { leastSpeed: speed(7.2, 0), entryAngle: angle(40), mustFall: true, about: null };
  expect(impossibleRelease({ ...base, releaseSpeed: speed(7.15, 0.05) }).verdict).toBe('fine');
  expect(impossibleRelease({ ...base, releaseSpeed: { unknown: 'no ball' } }).verdict).toBe('cannot tell');
});

test('a release angle with no target entered is questioned; with one it is fine; without an angle it cannot be told', () => {
  const base = { releaseAngle: angle(44), targetDistanceM: null, targetHeightM: 3.05, aimsAtTarget: true, about: null };
  expect(releaseAngleWithoutTarget(base).verdict).toBe('questioned');
  expect(releaseAngleWithoutTarget({ ...base, targetDistanceM: 4.2 }).verdict).toBe('fine');
  expect(releaseAngleWithoutTarget({ ...base, aimsAtTarget: false }).verdict).toBe('fine');
  expect(releaseAngleWithoutTarget({ ...base, releaseAngle: { unknown: 'no ball' } }).verdict).toBe('cannot tell');
});
