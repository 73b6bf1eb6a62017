import { expect, test } from 'vitest';
import { segmentAngleOf } from '../../../../shared/kernel/angle/segmentAngle.ts';
import { angularRate } from '../../../../shared/kernel/kinematics/angularRate.ts';
import { pointSpeed } from '../../../../shared/kernel/kinematics/pointSpeed.ts';
import { zeroLagButterworth } from '../../../../shared/kernel/signal/zeroLagButterworth.ts';
import { measured } from '../../../../shared/quantity.ts';
import { randomSource } from '../../../../main/demo/randomSource.ts';

const RATE = 120;
const CUTOFF = 10;
const exact = measured('s', 'Scale', 1, '1', 0);

const swingAt = (s: number) => 1.2 * Math.sin(2 * Math.PI * 0.8 * s);

/** A point on a circle of 0.35 m about the origin, swinging as sin(2π 0.8 t), with noise of `sd` on each coordinate. */
function swing(seed: number, sd: number) {
  const noise = randomSource(seed);
  const t = Array.from({ length: 121 }, (_, i) => i / RATE);
  const coordinate = (of: (phi: number) => number) =>
    zeroLagButterworth(
      t.map((s) => 0.35 * of(swingAt(s)) + noise.normal(sd)),
      RATE,
      CUTOFF,
    );
  const [x, y] = [coordinate(Math.cos), coordinate(Math.sin)];
  return { at: (i: number) => ({ x: x[i] as number, y: y[i] as number }) };
}

test('law: over 300 noisy swings the errors of both rates and of the speed are as large as stated', () => {
  const [sd, i] = [0.002, 57];
  const omega = 2 * Math.PI * 0.8;
  const truth = {
    velocity: 1.2 * omega * Math.cos((omega * i) / RATE),
    acceleration: -1.2 * omega ** 2 * Math.sin((omega * i) / RATE),
  };
  const off = { velocity: [] as number[], acceleration: [] as number[], speed: [] as number[] };
  for (let seed = 0; seed < 300; seed += 1) {
    const point = swing(seed, sd);
    const angles = [-1, 0, 1].map((k) => segmentAngleOf({ x: 0, y: 0 }, point.at(i + k))) as [number, number, number];
    // The origin is exact here, so the angle of a lever of 0.35 m is uncertain by sd/0.35 rad.
    const velocity = angularRate(angles, RATE, CUTOFF, 1, sd / 0.35, 'Swing');
    const acceleration = angularRate(angles, RATE, CUTOFF, 2, sd / 0.35, 'Swing');
    const speed = pointSpeed(point.at(i - 1), point.at(i + 1), RATE, CUTOFF, sd, exact, 'end');
    off.velocity.push((velocity.value - truth.velocity) / (velocity.u as number));
    off.acceleration.push((acceleration.value - truth.acceleration) / (acceleration.u as number));
    off.speed.push((speed.value - 0.35 * Math.abs(truth.velocity)) / (speed.u as number));
  }
  for (const [name, errors] of Object.entries(off)) {
    const rms = Math.hypot(...errors) / Math.sqrt(errors.length);
    expect(rms, name).toBeGreaterThan(0.85);
    expect(rms, name).toBeLessThan(1.15);
  }
});

test('law: the rate of an angle that crosses ±180° is that of the turning', () => {
  const rate = angularRate([Math.PI - 0.05, -Math.PI + 0.02, -Math.PI + 0.09], 100, null, 1, 0, 'Turn');
  expect(rate.value).toBeCloseTo(7, 9);
  expect(angularRate([Math.PI - 0.05, -Math.PI + 0.02, -Math.PI + 0.09], 100, null, 2, 0, 'Turn').value).toBeCloseTo(
    0,
    6,
  );
});

test('law: a scale uncertain by 2 % makes a speed uncertain by 2 %', () => {
  const scale = measured('s', 'Scale', 1, '1', 0.02);
  const speed = pointSpeed({ x: 0, y: 0 }, { x: 0.1, y: 0 }, 100, null, 0, scale, 'ball');
  expect(speed.value).toBeCloseTo(5, 9);
  expect(speed.u).toBeCloseTo(0.1, 9);
});

test('without an error of digitising there is a rate and the reason why it has no uncertainty', () => {
  const rate = angularRate([0, 0.1, 0.2], 100, 10, 1, 'no point was put down twice', 'Knee flexion');
  expect(rate.value).toBeCloseTo(10, 9);
  expect(rate.u).toBeNull();
  expect(rate.uReason).toContain('no point was put down twice');
});

test('refuses a frame rate of nothing and an angle that is none', () => {
  expect(() => angularRate([0, 0.1, 0.2], 0, null, 1, 0, 'Knee flexion')).toThrow(/rate above 0 Hz/);
  expect(() => angularRate([0, Number.NaN, 0.2], 100, null, 2, 0, 'Knee flexion')).toThrow(/finite/);
});
