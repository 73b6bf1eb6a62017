import { describe, expect, test } from 'vitest';
import { type Quantity, isKnown, measured } from '../../shared/quantity.ts';
import type { Unit } from '../../shared/units.ts';
import { weight } from '../../shared/kernel/force/weight.ts';
import { eccentricUtilisationRatio } from '../../shared/kernel/jump/eccentricUtilisationRatio.ts';
import { flightHeight } from '../../shared/kernel/jump/flightHeight.ts';
import { heightFromTakeoffVelocity } from '../../shared/kernel/jump/heightFromTakeoffVelocity.ts';
import { lewisPower } from '../../shared/kernel/jump/lewisPower.ts';
import { meanLandingForce } from '../../shared/kernel/jump/meanLandingForce.ts';
import { meanPushOffForce } from '../../shared/kernel/jump/meanPushOffForce.ts';
import type { PowerEquationId } from '../../shared/kernel/jump/powerEquations.ts';
import { predictPower } from '../../shared/kernel/jump/predictPower.ts';
import { preStretchAugmentation } from '../../shared/kernel/jump/preStretchAugmentation.ts';
import { reactiveStrengthIndex } from '../../shared/kernel/jump/reactiveStrengthIndex.ts';
import { reactiveStrengthIndexModified } from '../../shared/kernel/jump/reactiveStrengthIndexModified.ts';
import { reactiveStrengthRatio } from '../../shared/kernel/jump/reactiveStrengthRatio.ts';
import { takeoffVelocityFromFlightTime } from '../../shared/kernel/jump/takeoffVelocityFromFlightTime.ts';
import { takeoffVelocityFromHeight } from '../../shared/kernel/jump/takeoffVelocityFromHeight.ts';
import { flightTime } from '../../shared/kernel/jump/flightTime.ts';

const exact = <U extends Unit>(value: number, unit: U): Quantity<U> => measured('x', 'given value', value, unit, 0);

describe('free flight, check values computed from h = g t²/8, v = g t/2, v = √(2gh) with g = 9.80665 (J1, J3)', () => {
  test.each([
    [0.4, 0.19613, 1.9613],
    [0.5, 0.30646, 2.4517],
    [0.6, 0.4413, 2.942],
    [0.7, 0.60066, 3.4323],
  ])('J1: %f s of flight', (t, h, v) => {
    expect(flightHeight(exact(t, 's')).value).toBeCloseTo(h, 5);
    expect(takeoffVelocityFromFlightTime(exact(t, 's')).value).toBeCloseTo(v, 4);
  });

  test('J2: 0.500 s with g = 9.81 is 0.30656 m, so the two values of g differ by 0.1 mm', () => {
    expect((flightHeight(exact(0.5, 's')).value * 9.81) / 9.80665).toBeCloseTo(0.30656, 5);
  });

  test.each([
    [0.3, 2.42569, 0.4947],
    [0.4, 2.80095, 0.57123],
    [0.55, 3.2844, 0.66983],
  ])('J3: %f m', (h, v, t) => {
    expect(takeoffVelocityFromHeight(exact(h, 'm')).value).toBeCloseTo(v, 5);
    expect(flightHeight(exact(t, 's')).value).toBeCloseTo(h, 4);
  });

  test.each([
    [0.4, 0.053, 0.0261],
    [0.3, 0.02, 0.0099],
  ])('J4: landing lower than take-off makes the height from flight time too big', (h, s, excess) => {
    // t = (v + √(v² + 2 g s)) / g: time to fall to a level s below take-off.
    const g = 9.80665;
    const v = Math.sqrt(2 * g * h);
    const t = (v + Math.sqrt(v * v + 2 * g * s)) / g;
    expect(flightHeight(exact(t, 's')).value - h).toBeCloseTo(excess, 4);
  });

  test('J5, Yamashita, Murata & Inaba 2020 (Applied Sciences 10(3):776): landing 0.053 m lower reads 0.025 m too big', () => {
    const g = 9.80665;
    const v = Math.sqrt(2 * g * 0.4);
    const t = (v + Math.sqrt(v * v + 2 * g * 0.053)) / g;
    // 2 mm: the published means are printed to a millimetre and the jumpers' own heights differ.
    expect(Math.abs(flightHeight(exact(t, 's')).value - 0.4 - 0.025)).toBeLessThan(0.002);
  });

  test.each([
    [30, 0.0409, 0.0167],
    [60, 0.0204, 0.0083],
    [120, 0.0102, 0.0042],
    [240, 0.0051, 0.0021],
  ])('V10, V11: %d frames a second at 0.5 s, worst case and standard uncertainty of the height', (fps, worst, u) => {
    const height = flightHeight(flightTime(0.5, fps));
    expect(height.u).toBeCloseTo(u, 4);
    expect((height.u ?? 0) * Math.sqrt(6)).toBeCloseTo(worst, 4);
  });
});

describe('indices and forces (I1 to I9, computed check values)', () => {
  test('I1: reactive strength index, 0.35 m in 0.200 s of contact', () => {
    expect(reactiveStrengthIndex(exact(0.35, 'm'), exact(0.2, 's'), true).value).toBeCloseTo(1.75, 3);
  });
  test('I2: reactive strength ratio of the same jump is another number', () => {
    const t = (2 * takeoffVelocityFromHeight(exact(0.35, 'm')).value) / 9.80665;
    expect(reactiveStrengthRatio(exact(t, 's'), exact(0.2, 's')).value).toBeCloseTo(2.672, 3);
  });
  test('I3: modified index, Ebben & Petushek 2010', () => {
    expect(reactiveStrengthIndexModified(exact(0.3, 'm'), exact(0.75, 's')).value).toBeCloseTo(0.4, 3);
  });
  test('I4: touchdown velocity from 0.30 m', () => {
    expect(takeoffVelocityFromHeight(exact(0.3, 'm')).value).toBeCloseTo(2.4257, 4);
  });
  test('I5: eccentric utilisation ratio (McGuigan et al. 2006) and pre-stretch augmentation (from memory)', () => {
    expect(eccentricUtilisationRatio(exact(0.35, 'm'), exact(0.32, 'm')).value).toBeCloseTo(1.09375, 10);
    expect(preStretchAugmentation(exact(0.35, 'm'), exact(0.32, 'm')).value * 100).toBeCloseTo(9.375, 3);
  });
  test('I8: mean push-off force, 72 kg, 0.40 m over 0.35 m', () => {
    const force = meanPushOffForce(weight(exact(72, 'kg')), exact(0.4, 'm'), exact(0.35, 'm'));
    expect(force.value).toBeCloseTo(1513.0, 1);
    expect(force.value / weight(exact(72, 'kg')).value).toBeCloseTo(2.143, 3);
  });
  test('I9: landing from 0.30 m stopped in 0.10 s, mean force over time 2452.6 N', () => {
    // Impulse-momentum over 0.10 s; at constant force the stopping distance is v t / 2, and work-energy must agree.
    const v = takeoffVelocityFromHeight(exact(0.3, 'm')).value;
    const force = meanLandingForce(weight(exact(72, 'kg')), exact(0.3, 'm'), exact((v * 0.1) / 2, 'm'));
    expect(force.value).toBeCloseTo(2452.6, 1);
    expect(force.value / weight(exact(72, 'kg')).value).toBeCloseTo(3.474, 3);
  });
  test('height and velocity undo each other', () => {
    const h = exact(0.37, 'm');
    expect(heightFromTakeoffVelocity(takeoffVelocityFromHeight(h)).value).toBeCloseTo(0.37, 12);
  });
});

describe('power from height, each equation by its name', () => {
  const cases: [PowerEquationId, number, number, string][] = [
    ['sayers-squat', 3634.6, 4377.5, 'Sayers et al. 1999, published'],
    ['sayers-countermovement', 3589.8, 4255.5, 'Sayers et al. 1999, from memory'],
    ['harman-peak', 3246.0, 3973.0, 'Harman et al. 1991, from memory'],
    ['harman-mean', 1111.0, 1392.0, 'Harman et al. 1991, from memory'],
    ['canavan-vescovi', 3048.5, 3776.9, 'Canavan & Vescovi 2004, published'],
  ];
  test.each(cases)('%s at 40 cm and 72 kg: %f W; at 50 cm and 75 kg: %f W (%s)', (id, first, second) => {
    const a = predictPower(id, exact(0.4, 'm'), exact(72, 'kg'));
    const b = predictPower(id, exact(0.5, 'm'), exact(75, 'kg'));
    expect(isKnown(a) && a.value).toBeCloseTo(first, 1);
    expect(isKnown(b) && b.value).toBeCloseTo(second, 1);
  });

  test('Lewis formula, mean power of falling', () => {
    expect(lewisPower(exact(0.4, 'm'), exact(72, 'kg')).value).toBeCloseTo(988.8, 0);
    expect(lewisPower(exact(0.5, 'm'), exact(75, 'kg')).value).toBeCloseTo(1151.6, 0);
  });

  test('P-check: group means of Canavan & Vescovi 2004 (65.9 kg women) give one height for four equations', () => {
    // One height must reproduce all four printed means; 32.86 cm is the mean of the four solutions, ±0.1 cm their spread.
    const published: [PowerEquationId, number][] = [
      ['sayers-squat', 2920.8],
      ['sayers-countermovement', 2925.1],
      ['harman-peak', 2585.0],
      ['canavan-vescovi', 2425.4],
    ];
    for (const [id, watts] of published) {
      const power = predictPower(id, exact(0.3286, 'm'), exact(65.9, 'kg'));
      expect(isKnown(power) && Math.abs(power.value - watts)).toBeLessThan(6.5);
    }
  });

  test('refuses a height in the wrong unit: 0.40 cm in place of 40 cm is no credible jump', () => {
    const power = predictPower('sayers-squat', exact(0.004, 'm'), exact(72, 'kg'));
    expect(power).toEqual({ unknown: expect.stringContaining('W/kg') });
  });
});
