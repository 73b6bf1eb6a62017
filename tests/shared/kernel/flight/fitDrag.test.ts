import { describe, expect, test } from 'vitest';
import { randomSource } from '../../../../main/demo/randomSource.ts';
import { dragFactor } from '../../../../shared/kernel/flight/dragFactor.ts';
import { fitDrag } from '../../../../shared/kernel/flight/fitDrag.ts';
import type { FlightSample } from '../../../../shared/kernel/flight/fitRelease.ts';
import { liftFactor } from '../../../../shared/kernel/flight/liftFactor.ts';
import { ballById } from '../../../../shared/knowledge/balls/index.ts';
import { isKnown, measured } from '../../../../shared/quantity.ts';

/** A flight by fourth-order Runge-Kutta in steps of a tenth of a millisecond: not the kernel's integrator. */
function flown(speed: number, angle: number, k: number, frames: number, rateHz: number): FlightSample[] {
  type S = readonly [number, number, number, number];
  const rate = ([, , u, w]: S): S => [u, w, -k * Math.hypot(u, w) * u, -9.80665 - k * Math.hypot(u, w) * w];
  const moved = (s: S, r: S, dt: number) => s.map((value, i) => value + dt * (r[i] as number)) as unknown as S;
  let s: S = [0, 2, speed * Math.cos(angle), speed * Math.sin(angle)];
  const dt = 1e-4;
  const samples: FlightSample[] = [];
  const every = Math.round(1 / (rateHz * dt));
  for (let i = 0; samples.length < frames; i += 1) {
    if (i % every === 0) samples.push({ t: i * dt, x: s[0], y: s[1] });
    const k1 = rate(s);
    const k2 = rate(moved(s, k1, dt / 2));
    const k3 = rate(moved(s, k2, dt / 2));
    const k4 = rate(moved(s, k3, dt));
    s = s.map(
      (value, j) =>
        value + (dt / 6) * ((k1[j] as number) + 2 * (k2[j] as number) + 2 * (k3[j] as number) + (k4[j] as number)),
    ) as unknown as S;
  }
  return samples;
}

const long = flown(15, 0.5, 0.05, 100, 100);

test('law: a flight without error gives back the drag it was flown with', () => {
  const found = fitDrag(long, 0.0001);
  expect(isKnown(found) && found.value).toBeCloseTo(0.05, 5);
});

test('100 noisy flights of 1 s, 4 mm a coordinate: the drag lies within 2 u in 90 % of them or more, and u is no wider than needed', () => {
  const errors = Array.from({ length: 100 }, (_, seed) => {
    const noise = randomSource(seed);
    const found = fitDrag(
      long.map(({ t, x, y }) => ({ t, x: x + noise.normal(0.004), y: y + noise.normal(0.004) })),
      'its scatter is used',
    );
    if (!isKnown(found)) throw new Error(found.unknown);
    return (found.value - 0.05) / (found.u as number);
  });
  expect(errors.filter((error) => Math.abs(error) <= 2).length).toBeGreaterThanOrEqual(90);
  const rms = Math.hypot(...errors) / 10;
  expect(rms).toBeGreaterThan(0.75);
  expect(rms).toBeLessThan(1.25);
});

test('cannot tell: a quarter of a second of a heavy ball says what it shows, and nothing more', () => {
  const noise = randomSource(3);
  const short = flown(9, 0.9, 0.0225, 15, 60).map(({ t, x, y }) => ({
    t,
    x: x + noise.normal(0.005),
    y: y + noise.normal(0.005),
  }));
  expect(fitDrag(short, 0.005)).toEqual({
    unknown: expect.stringMatching(/cannot tell drag from none: it shows/) as string,
  });
});

test('a scale that is uncertain makes drag uncertain: lengths that fall too fast look like air', () => {
  const [exact, rough] = [fitDrag(long, 0.001), fitDrag(long, 0.001, 0.01)];
  if (!isKnown(exact) || !isKnown(rough)) throw new Error('no drag found');
  expect(rough.u).toBeGreaterThan(3 * (exact.u as number));
});

test('refuses what is no flight, saying what it got', () => {
  expect(() => fitDrag(long.slice(0, 5), 0.004)).toThrow(/at least 6 frames of flight, got 5/);
  expect(() =>
    fitDrag(
      long.map((sample) => ({ ...sample, y: Number.NaN })),
      0.004,
    ),
  ).toThrow(/finite samples/);
});

describe('lift by spin', () => {
  const ball = ballById('basketball-7');
  if (ball === null) throw new Error('no ball');

  test('definition: with C_L as large as C_d, lift is as strong as drag', () => {
    const drag = dragFactor(ball);
    const lift = liftFactor(ball, measured('C_L', 'Lift', ball.drag.coefficient, '1', 0));
    expect(lift.value).toBeCloseTo(drag.value, 12);
    // The ball's own C_d cancels, so less is uncertain.
    expect(lift.u).toBeLessThan(drag.u as number);
  });
  test('topspin pushes down', () => {
    expect(liftFactor(ball, measured('C_L', 'Lift', -0.1, '1', 0)).value).toBeLessThan(0);
  });
});
