import { describe, expect, test } from 'vitest';
import { apex } from '../../shared/kernel/flight/apex.ts';
import { NO_AIR } from '../../shared/kernel/flight/release.ts';
import { flightHeight } from '../../shared/kernel/jump/flightHeight.ts';
import { heightFromTakeoffVelocity } from '../../shared/kernel/jump/heightFromTakeoffVelocity.ts';
import { integrateForce, motionFromRest } from '../../shared/kernel/jump/integrateForce.ts';
import { takeoffVelocityFromHeight } from '../../shared/kernel/jump/takeoffVelocityFromHeight.ts';
import { measured, type Quantity } from '../../shared/quantity.ts';
import type { Unit } from '../../shared/units.ts';

const exact = <U extends Unit>(value: number, unit: U): Quantity<U> => measured('x', 'given', value, unit, 0);
const [M, G] = [70, 9.80665];
const W = M * G;

/** J7 of the mechanics dossier up to take-off: 1 s of standing, half sine down, half sine up. 1000 Hz. */
const fz = Float64Array.from({ length: 1661 }, (_, i) => {
  const t = i / 1000 - 1;
  if (t < 0) return W;
  return t < 0.3 ? W - 350 * Math.sin((Math.PI * t) / 0.3) : W + 1100 * Math.sin((Math.PI * (t - 0.3)) / 0.36);
});

const height = (v: number) => heightFromTakeoffVelocity(exact(v, 'm/s')).value;

describe('J8: what a wrong body weight does to J7 (closed form, computed)', () => {
  const integrals = integrateForce(fz, 1000);
  const impulse = (fromS: number) => (integrals.first[1660] as number) - (integrals.first[fromS * 1000] as number);

  test('right: 0.35711 m, 0.35711 m by work and energy', () => {
    const { velocity, position } = motionFromRest(integrals, W, 1);
    expect(velocity(1.66)).toBeCloseTo(2.64651, 4);
    expect(height(velocity(1.66))).toBeCloseTo(0.3571, 3);
    expect(position(1.66)).toBeCloseTo(0.16125, 4);
  });
  test('body weight 1 % too big, mass kept: 0.33985 m; with the second of standing integrated too: 0.31453 m', () => {
    expect(height((impulse(1) - 1.01 * W * 0.66) / M)).toBeCloseTo(0.33985, 4);
    expect(height((impulse(0) - 1.01 * W * 1.66) / M)).toBeCloseTo(0.31453, 4);
  });
  test('body weight left in: 638.32 N·s, 9.119 m/s, “4.24 m”', () => {
    expect(impulse(1)).toBeCloseTo(638.32, 1);
    expect(impulse(1) / M).toBeCloseTo(9.119, 3);
    expect(height(impulse(1) / M)).toBeCloseTo(4.24, 2);
  });
});

test('V17: 4.00 s of a clip captured at 240 and played at 30 are 0.500 s: 0.3065 m, not 19.61 m', () => {
  expect(flightHeight(exact(4 / (240 / 30), 's')).value).toBeCloseTo(0.3065, 4);
  expect(flightHeight(exact(4, 's')).value).toBeCloseTo(19.61, 2);
});

test.each([
  [0.3, 2.426, 0.247],
  [0.4, 2.801, 0.286],
  [0.5, 3.132, 0.319],
])('HB6: a rise of %d m takes %d m/s at take-off and %d s to the top', (rise, v, t) => {
  const speed = takeoffVelocityFromHeight(exact(rise, 'm'));
  expect(speed.value).toBeCloseTo(v, 3);
  const top = apex({ speed, angle: exact(Math.PI / 2, 'rad'), height: exact(0, 'm') }, NO_AIR);
  expect(top.time.value).toBeCloseTo(t, 3);
  expect(top.height.value).toBeCloseTo(rise, 9);
});
