import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { angleToScore } from '../../../../shared/kernel/flight/angleToScore.ts';
import { apex } from '../../../../shared/kernel/flight/apex.ts';
import { entryAngle } from '../../../../shared/kernel/flight/entryAngle.ts';
import { fitRelease } from '../../../../shared/kernel/flight/fitRelease.ts';
import { forwardFlight } from '../../../../shared/kernel/flight/forwardFlight.ts';
import { leastSpeed } from '../../../../shared/kernel/flight/leastSpeed.ts';
import { leastSpeedAngle } from '../../../../shared/kernel/flight/leastSpeedAngle.ts';
import { movedRelease } from '../../../../shared/kernel/flight/movedRelease.ts';
import { advance, launch } from '../../../../shared/kernel/flight/path.ts';
import { NO_AIR } from '../../../../shared/kernel/flight/release.ts';
import { speedToScore } from '../../../../shared/kernel/flight/speedToScore.ts';
import { isKnown, measured, type Reading } from '../../../../shared/quantity.ts';

const m = (value: number, u = 0) => measured('x', 'Length', value, 'm', u);
const mps = (value: number, u = 0) => measured('v', 'Speed', value, 'm/s', u);
const rad = (value: number, u = 0) => measured('θ', 'Angle', value, 'rad', u);
const degrees = (deg: number) => (deg * Math.PI) / 180;
const value = (reading: Reading): number => (isKnown(reading) ? reading.value : Number.NaN);
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test('law: the speed to score is least at the least-speed angle, where release and entry angle add to 90°', () => {
  fc.assert(
    fc.property(number(1, 30), number(-2, 2), number(-0.2, 0.2), (d, h, off) => {
      const best = leastSpeedAngle(m(d), m(h));
      const least = leastSpeed(m(d), m(h)).value;
      expect(value(speedToScore(m(d), m(h), best, NO_AIR, false))).toBeCloseTo(least, 6);
      expect(best.value + entryAngle(m(d), m(h), best).value).toBeCloseTo(Math.PI / 2, 6);
      const other = value(speedToScore(m(d), m(h), rad(best.value + off), NO_AIR, false));
      if (!Number.isNaN(other)) expect(other).toBeGreaterThanOrEqual(least - 1e-9);
    }),
  );
});

test('law: speedToScore and angleToScore undo each other, in a vacuum and with drag', () => {
  fc.assert(
    fc.property(number(2, 12), number(-1.5, 1), number(0, 0.03), (d, h, k) => {
      const air = { drag: measured('k', 'Drag', k, '/m', 0), lift: null };
      // Flatter than the least-speed angle, where the flat solution is the one.
      const angle = leastSpeedAngle(m(d), m(h)).value - 0.25;
      const speed = speedToScore(m(d), m(h), rad(angle), air, false);
      if (!isKnown(speed)) return;
      expect(value(angleToScore(m(d), m(h), speed, air))).toBeCloseTo(angle, 5);
    }),
    { numRuns: 40 },
  );
});

test('law: without air, the path does not care where the floor is; more drag never carries farther', () => {
  fc.assert(
    fc.property(number(2, 25), number(-0.3, 1.2), number(0.001, 0.04), (v, θ, k) => {
      const at = (height: number, drag: number) => {
        const air = drag === 0 ? NO_AIR : { drag: measured('k', 'Drag', drag, '/m', 0), lift: null };
        const arrival = forwardFlight({ speed: mps(v), angle: rad(θ), height: m(height) }, air).fallingTo(
          m(height - 2),
        );
        return 'unknown' in arrival ? Number.NaN : arrival.distance.value;
      };
      expect(at(2, 0)).toBeCloseTo(at(7, 0), 8);
      expect(at(2, k)).toBeLessThan(at(2, 0));
    }),
    { numRuns: 40 },
  );
});

const energy = (s: { y: number; vx: number; vy: number }) => 9.80665 * s.y + (s.vx ** 2 + s.vy ** 2) / 2;

test('law: energy is conserved without air and only lost with drag', () => {
  fc.assert(
    fc.property(number(1, 30), number(-1.4, 1.4), number(0.05, 1.5), (v, θ, t) => {
      const start = launch(v, θ, 2);
      expect(energy(advance(start, t, { drag: 0, lift: 0 }))).toBeCloseTo(energy(start), 6);
      expect(energy(advance(start, t, { drag: 0.02, lift: 0 }))).toBeLessThan(energy(start));
      // Lift is always across the path: it does no work.
      expect(energy(advance(start, t, { drag: 0, lift: 0.005 }))).toBeCloseTo(energy(start), 6);
    }),
    { numRuns: 60 },
  );
});

test('law: the way back is the way there', () => {
  const air = { drag: 0.02, lift: 0.003 };
  const start = launch(18, 0.4, 1.9);
  const back = advance(advance(start, 0.8, air), -0.8, air);
  expect(back.x).toBeCloseTo(0, 8);
  expect(back.y).toBeCloseTo(1.9, 8);
  expect(back.vx).toBeCloseTo(start.vx, 7);
});

const add = (a: number[], b: number[], f: number) => a.map((x, i) => x + f * (b[i] as number));

/** Classical fourth-order Runge-Kutta with a small fixed step: a second, independent route to the integrator. */
function rungeKutta(speed: number, angle: number, seconds: number, k: number, l: number): number[] {
  const slope = ([, , u = 0, w = 0]: number[]) => {
    const s = Math.hypot(u, w);
    return [u, w, -s * (k * u + l * w), -9.80665 - s * (k * w - l * u)];
  };
  const steps = 4000;
  const h = seconds / steps;
  let state = [0, 0, speed * Math.cos(angle), speed * Math.sin(angle)];
  for (let i = 0; i < steps; i += 1) {
    const a = slope(state);
    const b = slope(add(state, a, h / 2));
    const c = slope(add(state, b, h / 2));
    const d = slope(add(state, c, h));
    state = state.map(
      (x, j) => x + (h / 6) * ((a[j] as number) + 2 * (b[j] as number) + 2 * (c[j] as number) + (d[j] as number)),
    );
  }
  return state;
}

test('two routes: the adaptive integrator agrees with a fixed-step Runge-Kutta', () => {
  for (const [v, θ, t, k, l] of [
    [7.2, 0.9, 0.95, 0.023, 0.0046],
    [22.4, 0.02, 0.44, 0.0185, 0],
    [50, -0.09, 0.5, 0.02, 0],
    [13, 0.73, 1.9, 0.0005, 0],
  ] as const) {
    const ours = advance({ t: 0, x: 0, y: 0, vx: v * Math.cos(θ), vy: v * Math.sin(θ) }, t, { drag: k, lift: l });
    const other = rungeKutta(v, θ, t, k, l);
    [ours.x, ours.y, ours.vx, ours.vy].forEach((x, i) => expect(x).toBeCloseTo(other[i] as number, 8));
  }
});

test('law: a fit finds what was thrown, wherever the origin and whichever way it flies', () => {
  fc.assert(
    fc.property(
      number(2, 30),
      number(-1, 1.3),
      number(-5, 5),
      number(0, 0.03),
      fc.boolean(),
      (v, θ, shift, k, left) => {
        const air = { drag: k, lift: 0 };
        const samples = Array.from({ length: 12 }, (_, i) => {
          const s = advance(launch(v, θ, 2), i / 100, air);
          return { t: 3 + s.t, x: shift + (left ? -s.x : s.x), y: s.y + shift };
        });
        const fit = fitRelease(samples, 0.001, k === 0 ? null : { k });
        expect(fit.releaseSpeed.value).toBeCloseTo(v, 4);
        expect(fit.releaseAngle.value).toBeCloseTo(θ, 4);
        expect(fit.gravity.value).toBeCloseTo(9.80665, 2);
      },
    ),
    { numRuns: 40 },
  );
});

test('law: g taken as known makes the vertical velocity of a short clip surer and moves it little', () => {
  const samples = Array.from({ length: 8 }, (_, i) => advance(launch(8, 0.9, 2), i / 60, { drag: 0, lift: 0 }));
  const free = fitRelease(samples, 0.005, null);
  const known = fitRelease(samples, 0.005, null, { gravity: 'standard' });
  expect(known.velocityY.u as number).toBeLessThan(0.5 * (free.velocityY.u as number));
  expect(known.velocityY.value).toBeCloseTo(free.velocityY.value, 6);
  expect(known.gravity.u).toBeCloseTo(free.gravity.u as number, 12);
});

test('propagation by hand: apex height has u = v_y u(v_y)/g', () => {
  const top = apex({ speed: mps(6, 0.1), angle: rad(Math.PI / 2), height: m(2) }, NO_AIR).height;
  expect(top.u).toBeCloseTo((6 * 0.1) / 9.80665, 6);
});

test('law: nothing moved, nothing changed; higher needs less speed at the same angle', () => {
  const release = { speed: mps(7.1973), angle: rad(degrees(52)), height: m(2.1) };
  const from = (by: number) => movedRelease(release, m(4.225), m(3.05), { kind: 'higher', by: m(by) }, NO_AIR, true);
  expect(value(from(0).speed)).toBeCloseTo(7.1973, 4);
  expect(value(from(0.05).speed)).toBeLessThan(7.1973);
  // The table of vacuum flight at 2.45 m: least speed 6.9089 m/s at 49.041°.
  expect(from(0.35).leastSpeed.value).toBeCloseTo(6.9089, 4);
  expect(from(0.35).leastSpeedAngle.value).toBeCloseTo(degrees(49.041), 4);
});

test('closed form: 40 ms later from a body rising at 1 m/s and moving 0.5 m/s: 32.2 mm higher, 20 mm nearer', () => {
  const later = movedRelease(
    { speed: mps(7.1973), angle: rad(degrees(52)), height: m(2.1) },
    m(4.225),
    m(3.05),
    { kind: 'later', by: measured('δt', 'Later', 0.04, 's', 0), bodyUp: mps(1), bodyForward: mps(0.5) },
    NO_AIR,
    true,
  );
  expect(later.height.value).toBeCloseTo(2.1 + 0.04 - 0.00785, 5);
  expect(later.distance.value).toBeCloseTo(4.205, 9);
  expect(value(later.speed)).toBeLessThan(7.1973);
});
