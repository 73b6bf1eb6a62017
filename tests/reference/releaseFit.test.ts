import { describe, expect, test } from 'vitest';
import { fitRelease, type FlightSample } from '../../shared/kernel/flight/fitRelease.ts';
import { gravityCheck } from '../../shared/kernel/flight/gravityCheck.ts';
import { advance, launch } from '../../shared/kernel/flight/path.ts';
import { isKnown } from '../../shared/quantity.ts';
import { describeOpenData } from '../support/openData.ts';

const inDegrees = (rad: number) => (rad * 180) / Math.PI;
const G = 9.80665;

test('V20: worked free throw, 60 fps, every second frame: 7.197 m/s at 52.0°, g 9.81', () => {
  const x = [0, 0.1477, 0.2954, 0.4431, 0.5908, 0.7385, 0.8862];
  const y = [2.1, 2.2836, 2.4563, 2.6181, 2.769, 2.9091, 3.0382];
  const fit = fitRelease(
    x.map((value, i) => ({ t: (2 * i) / 60, x: value, y: y[i] as number })),
    0.0001,
    null,
  );
  expect(fit.releaseSpeed.value).toBeCloseTo(7.197, 2);
  expect(inDegrees(fit.releaseAngle.value)).toBeCloseTo(52, 1);
  expect(Math.abs(fit.gravity.value - 9.81)).toBeLessThan(0.1);
  expect(fit.verdict).toBe('fine');
});

/** A made-up throw in a vacuum, sampled without error. */
const flight = (frames: number, rate: number, slow = 1): FlightSample[] =>
  Array.from({ length: frames }, (_, i) => {
    const t = i / rate;
    return { t: t * slow, x: 4.4 * t, y: 2.1 + 5.7 * t - (G / 2) * t * t };
  });

describe('normal equations of a straight line and a parabola (JCGM 100:2008, H.3): 5 mm per coordinate', () => {
  test.each([
    [16, 60, 0.016, 0.062, 0.48],
    [8, 60, 0.046, 0.169, 2.8],
    [32, 240, 0.023, 0.089, 1.3],
  ])('V14: %d frames at %d Hz: u(vx) %d, u(vy at release) %d m/s, u(g) %d m/s²', (frames, rate, uVx, uVy, uG) => {
    const fit = fitRelease(flight(frames, rate), 0.005, null);
    expect(fit.velocityX.u).toBeCloseTo(uVx, 3);
    expect(fit.velocityY.u).toBeCloseTo(uVy, 3);
    expect(fit.gravity.u).toBeCloseTo(uG, uG > 1 ? 1 : 2);
  });
});

test('law: an error that all places share moves the path whole: of 5 mm, 3 mm their own and 4 mm shared, velocity and g know the 3 mm, the place of release both', () => {
  const samples = flight(16, 60);
  const [own, both] = [
    fitRelease(samples, 0.003, null),
    fitRelease(samples, Math.hypot(0.003, 0.004), null, { sharedU: 0.004 }),
  ];
  for (const name of ['velocityX', 'velocityY', 'gravity', 'releaseAngle'] as const)
    expect(both[name].u).toBeCloseTo(own[name].u ?? Number.NaN, 12);
  expect(both.y.u).toBeCloseTo(Math.hypot(own.y.u ?? Number.NaN, 0.004), 12);
  // And so it is: the same flight 4 mm higher has the same velocity and g.
  const higher = fitRelease(
    samples.map((sample) => ({ ...sample, y: sample.y + 0.004 })),
    0.003,
    null,
  );
  expect(higher.gravity.value).toBeCloseTo(own.gravity.value, 9);
  expect(higher.velocityY.value).toBeCloseTo(own.velocityY.value, 9);
});

test('V15: a release read half a frame late loses g Δt/2 of vertical velocity: 0.082 m/s at 60 fps', () => {
  const samples = flight(16, 60);
  const onTime = fitRelease(samples, 0.005, null);
  const late = fitRelease(samples, 0.005, null, { releaseAt: { t: 0.5 / 60, u: 0 } });
  expect(onTime.velocityY.value - late.velocityY.value).toBeCloseTo(0.082, 3);
  // And a release known to half a frame carries it as uncertainty: half-width over √3.
  const unsure = fitRelease(samples, 1e-9, null, { releaseAt: { t: 0, u: 0.5 / 60 / Math.sqrt(3) } });
  expect(unsure.velocityY.u).toBeCloseTo(0.0817 / Math.sqrt(3), 4);
});

test.each([
  [2, 2.4517],
  [4, 0.6129],
  [8, 0.15323],
  [9.6, 0.10641],
  [32, 0.00958],
])('V18: free fall seen %d times slowed: g comes out as %d, and the factor is proposed back', (k, g) => {
  const check = gravityCheck(flight(40, 120, k), 0.0005);
  expect(check.gravity.value).toBeCloseTo(g, 4);
  expect(check.verdict).toBe('questioned');
  expect(isKnown(check.slowMotionFactor) && check.slowMotionFactor.value).toBeCloseTo(k, 2);
});

test('law: slowed k times, speeds read k times and accelerations k² times too small', () => {
  const real = fitRelease(flight(24, 240), 0.002, null);
  const slow = fitRelease(flight(24, 240, 8), 0.002, null);
  expect(real.releaseSpeed.value / slow.releaseSpeed.value).toBeCloseTo(8, 9);
  expect(real.gravity.value / slow.gravity.value).toBeCloseTo(64, 6);
});

test('law: what forwardFlight throws with drag, fitRelease catches with the same drag', () => {
  const air = { drag: 0.01847, lift: 0 };
  const start = launch(22.4, (4 * Math.PI) / 180, 2.6);
  const samples = Array.from({ length: 14 }, (_, i) => advance(start, i / 120, air));
  const fit = fitRelease(samples, 0.001, { k: air.drag });
  expect(fit.releaseSpeed.value).toBeCloseTo(22.4, 6);
  expect(inDegrees(fit.releaseAngle.value)).toBeCloseTo(4, 5);
  expect(fit.gravity.value).toBeCloseTo(G, 4);
  // Without it the speed reads low: the ball slows while it is watched.
  expect(fitRelease(samples, 0.001, null).releaseSpeed.value).toBeLessThan(22.0);
});

test('three answers: eight coarse frames cannot tell, twenty fine ones can', () => {
  expect(fitRelease(flight(8, 60), 0.005, null).verdict).toBe('cannot tell');
  expect(fitRelease(flight(24, 60), 0.005, null).verdict).toBe('fine');
});

test('a misread point is questioned', () => {
  const samples = flight(20, 60).map((s, i) => (i === 7 ? { ...s, y: s.y + 0.15 } : s));
  expect(fitRelease(samples, 0.003, null).verdict).toBe('questioned');
});

test('refuses five frames, times that do not rise and NaN, saying what it got', () => {
  expect(() => fitRelease(flight(5, 60), 0.005, null)).toThrow(/at least 6 frames of flight, got 5/);
  expect(() => fitRelease(flight(8, 60).toReversed(), 0.005, null)).toThrow(/times that rise/);
  expect(() =>
    fitRelease(
      flight(8, 60).map((s, i) => (i === 3 ? { ...s, x: Number.NaN } : s)),
      0.005,
      null,
    ),
  ).toThrow(expect.objectContaining({ code: 'input-out-of-range', path: 'samples.3' }));
});

describeOpenData(
  'projectile-ball-toss',
  'tossed ball digitised at 30 Hz (Duarte & Watanabe, CC BY 4.0), fitted by NumPy',
  (data) => {
    test('g, speed, angle and residual within 1e-4', () => {
      const { trials } = data.json('expected.json') as { trials: Record<string, Record<string, number>> };
      const expected = trials['ball_toss_30hz.csv'] as Record<string, number>;
      const samples = data
        .text('ball_toss_30hz.csv')
        .trim()
        .split('\n')
        .slice(1)
        .map((line) => line.split(',').map(Number))
        .map(([t = 0, x = 0, y = 0]) => ({ t, x, y }));
      const fit = fitRelease(samples, 0.002, null);
      expect(fit.gravity.value).toBeCloseTo(expected.g_estimate_m_s2 as number, 3);
      expect(fit.velocityX.value).toBeCloseTo(expected.vx_m_s as number, 4);
      expect(fit.velocityY.value).toBeCloseTo(expected.vy0_m_s as number, 4);
      expect(fit.releaseSpeed.value).toBeCloseTo(expected.speed0_m_s as number, 4);
      expect(inDegrees(fit.releaseAngle.value)).toBeCloseTo(expected.release_angle_deg as number, 3);
      expect(fit.verdict).toBe('fine');
    });
  },
);
