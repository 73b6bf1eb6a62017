import { expect, test } from 'vitest';
import { angularVelocity } from '../../../../shared/kernel/kinematics/angularVelocity.ts';
import { motionBlur } from '../../../../shared/kernel/kinematics/motionBlur.ts';
import { twoPointSpeed } from '../../../../shared/kernel/kinematics/twoPointSpeed.ts';
import { measured } from '../../../../shared/quantity.ts';

const seconds = (value: number) => measured('Δt', 'Interval', value, 's', 0);
const mps = (value: number) => measured('v', 'Speed', value, 'm/s', 0);

test.each([
  [60, 0.42],
  [240, 1.7],
])('V13: propagation: 5 mm per coordinate between two frames at %d Hz is ± %d m/s', (rate, u) => {
  const speed = twoPointSpeed({ x: 0, y: 0 }, { x: 7 / rate, y: 0 }, seconds(1 / rate), 0.005);
  expect(speed.value).toBeCloseTo(7, 9);
  // The tabulated figures are for motion along one axis; to first order nothing across it counts.
  expect(speed.u).toBeCloseTo(u, 1.9);
});

test.each([
  [60, 37.3],
  [120, 18.7],
  [240, 9.3],
])('HB5: definition: a ball at 22.4 m/s travels in one frame at %d Hz %d cm', (rate, cm) => {
  expect(100 * motionBlur(mps(22.4), 1 / rate).value).toBeCloseTo(cm, 1);
});

test.each([
  [60, 117],
  [250, 28],
  [1000, 7],
])('V16: definition: 7 m/s with the shutter open 1/%d s is smeared %d mm', (shutter, mm) => {
  expect(1000 * motionBlur(mps(7), 1 / shutter).value).toBeCloseTo(mm, -0.3);
});

test('law: steady turning has steady angular velocity, also across ±180°', () => {
  const angles = Array.from({ length: 60 }, (_, i) => Math.atan2(Math.sin(0.2 * i), Math.cos(0.2 * i)));
  angularVelocity(angles, 50)
    .slice(1, -1)
    .forEach((w) => expect(w).toBeCloseTo(10, 9));
  angularVelocity(angles, 50, 2)
    .slice(1, -1)
    .forEach((a) => expect(a).toBeCloseTo(0, 6));
});

test('worked: 1000 °/s on a 0.35 m lever is 6.1087 m/s', () => {
  const angles = Array.from({ length: 5 }, (_, i) => (i * 1000 * Math.PI) / 180 / 240);
  expect((angularVelocity(angles, 240)[2] as number) * 0.35).toBeCloseTo(6.1087, 4);
});

test('refuses no interval', () => {
  expect(() => twoPointSpeed({ x: 0, y: 0 }, { x: 1, y: 0 }, seconds(0), 0.005)).toThrow(/no finite value/);
});
