import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../../shared/errors.ts';
import { weight } from '../../../../shared/kernel/force/weight.ts';
import { compareHeights, type HeightComparison } from '../../../../shared/kernel/jump/compareHeights.ts';
import { flightHeight } from '../../../../shared/kernel/jump/flightHeight.ts';
import { flightTime } from '../../../../shared/kernel/jump/flightTime.ts';
import { jumpAndReachHeight } from '../../../../shared/kernel/jump/jumpAndReachHeight.ts';
import { meanPushOffForce } from '../../../../shared/kernel/jump/meanPushOffForce.ts';
import { predictPower } from '../../../../shared/kernel/jump/predictPower.ts';
import { rateOfForceDevelopment } from '../../../../shared/kernel/jump/rateOfForceDevelopment.ts';
import { reactiveStrengthRatio } from '../../../../shared/kernel/jump/reactiveStrengthRatio.ts';
import { takeoffVelocityFromFlightTime } from '../../../../shared/kernel/jump/takeoffVelocityFromFlightTime.ts';
import { heightFromTakeoffVelocity } from '../../../../shared/kernel/jump/heightFromTakeoffVelocity.ts';
import type { JumpHeight } from '../../../../shared/kernel/jump/unlikeness.ts';
import { measured, type Quantity } from '../../../../shared/quantity.ts';
import type { Unit } from '../../../../shared/units.ts';

const q = <U extends Unit>(value: number, unit: U, u: number | string = 0): Quantity<U> =>
  measured('x', 'value', value, unit, u);
const seconds = fc.double({ min: 0.1, max: 0.9, noNaN: true });

describe('laws of flight', () => {
  test('twice the time, four times the height', () => {
    fc.assert(
      fc.property(seconds, (t) => {
        expect(flightHeight(q(2 * t, 's')).value / flightHeight(q(t, 's')).value).toBeCloseTo(4, 10);
      }),
    );
  });
  test('height from time, and from the velocity from time, are one', () => {
    fc.assert(
      fc.property(seconds, (t) => {
        const byVelocity = heightFromTakeoffVelocity(takeoffVelocityFromFlightTime(q(t, 's')));
        expect(byVelocity.value).toBeCloseTo(flightHeight(q(t, 's')).value, 12);
      }),
    );
  });
  test('twice the frame rate, half the uncertainty', () => {
    fc.assert(
      fc.property(seconds, fc.integer({ min: 30, max: 480 }), (t, fps) => {
        expect((flightTime(t, fps).u ?? 0) / (flightTime(t, 2 * fps).u ?? 1)).toBeCloseTo(2, 10);
      }),
    );
  });
});

describe('what an uncertainty is made of', () => {
  test('no frame rate: none, and the reason passes on to the height', () => {
    const height = flightHeight(flightTime(0.5, null));
    expect(height.u).toBeNull();
    expect(height.uReason).toContain('resolution of the timing device');
  });
  test('two intervals that share take-off: a late reading lengthens one and shortens the other', () => {
    // First order by hand: u² = (u_f/t_c)² + (t_f u_c/t_c²)² + (u_f/t_c)(t_f u_c/t_c²), with r = −1/2 and unlike signs.
    const [tf, tc, u] = [0.5, 0.2, 0.003];
    const [a, b] = [u / tc, (tf * u) / tc ** 2];
    const ratio = reactiveStrengthRatio(q(tf, 's', u), q(tc, 's', u));
    expect(ratio.u).toBeCloseTo(Math.sqrt(a * a + b * b + a * b), 3);
  });
  test('a predicted power has none, and says why', () => {
    const power = predictPower('sayers-squat', q(0.4, 'm', 0.01), q(72, 'kg', 0.1));
    expect(power).toMatchObject({ u: null, uReason: expect.stringContaining('prediction error') });
  });
});

const height = (value: number, changes: Partial<JumpHeight> = {}): JumpHeight => ({
  quantity: q(value, 'm', 0.005),
  reference: 'take-off',
  method: 'flight-time',
  arms: 'hips',
  ...changes,
});

describe('comparing heights', () => {
  test('alike: difference and ratio, and whether it is clear', () => {
    const found = compareHeights(height(0.3), height(0.36)) as HeightComparison;
    expect(found.difference.value).toBeCloseTo(0.06, 12);
    expect(found.ratio?.value).toBeCloseTo(1.2, 12);
    expect(found.isClear).toBe(true);
    expect(compareHeights(height(0.3), height(0.305))).toMatchObject({ isClear: false });
    expect(compareHeights(height(0.3), height(0.36, { quantity: q(0.36, 'm', 'by eye') }))).toMatchObject({
      isClear: null,
    });
  });
  test.each([
    [{ reference: 'standing' }, 'from take-off, the other from standing'],
    [{ method: 'force-plate' }, 'by flight time, the other by force plate'],
    [{ arms: 'free' }, 'on the hips in one and free'],
    [{ arms: null }, 'not recorded'],
  ] as const)('unlike in %o: unknown, and it says what differs', (changes, words) => {
    expect(compareHeights(height(0.3), height(0.36, changes))).toEqual({ unknown: expect.stringContaining(words) });
  });
});

describe('refusals name the function, the need and what came', () => {
  test.each([
    [() => flightTime(0, 60), 'flight time needs a time above 0 s, got 0'],
    [() => flightTime(Number.NaN, 60), 'got NaN'],
    [() => flightTime(0.5, 0), 'frame rate above 0 Hz'],
    [() => flightHeight(q(-0.1, 's')), 'flightHeight needs'],
    [() => weight(q(0, 'kg')), 'weight needs'],
    [() => meanPushOffForce(q(700, 'N'), q(0.3, 'm'), q(0, 'm')), 'meanPushOffForce needs'],
    [() => jumpAndReachHeight(q(2.3, 'm'), q(2.2, 'm')), 'at least the standing reach'],
    [() => rateOfForceDevelopment([1, 2], 1000, 1, 1, 0), 'rateOfForceDevelopment needs'],
  ])('%#', (act, words) => {
    expect(act).toThrow(DomainError);
    expect(act).toThrow(words);
  });
});
