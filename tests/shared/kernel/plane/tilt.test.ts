import { expect, test } from 'vitest';
import { tiltFromFlight } from '../../../../shared/kernel/flight/tiltFromFlight.ts';
import { planeFromCalibration } from '../../../../shared/kernel/plane/planeFromCalibration.ts';
import { tiltFromPlumbLine } from '../../../../shared/kernel/plane/tiltFromPlumbLine.ts';
import { flown } from '../../../support/flown.ts';

const radians = (deg: number) => (deg * Math.PI) / 180;

/** What a camera rolled by `deg` makes of a true place, as pixels with y down, 100 px a metre. */
function filmed(deg: number, x: number, y: number): { x: number; y: number } {
  const [c, s] = [Math.cos(radians(deg)), Math.sin(radians(deg))];
  return { x: 100 * (x * c + y * s), y: -100 * (-x * s + y * c) };
}

test.each([-12, 0, 7])(
  'law: a plumb line in a picture rolled by %d° gives that tilt, and the calibration turns it back',
  (deg) => {
    const tilt = tiltFromPlumbLine(filmed(deg, 1, 3), filmed(deg, 1, 0), 1);
    expect(tilt.value).toBeCloseTo(radians(deg), 12);
    // Two ends misread by 1 px across 300 px.
    expect(tilt.u).toBeCloseTo(Math.SQRT2 / 300, 5);
    const plane = planeFromCalibration({
      kind: 'length',
      from: { xPx: 0, yPx: 0 },
      to: { xPx: 100, yPx: 0 },
      lengthM: 1,
      lengthUM: 0,
      pointUPx: 1,
      tiltDeg: (tilt.value * 180) / Math.PI,
    });
    const [top, bottom] = [plane.toMetres(filmed(deg, 1, 3)), plane.toMetres(filmed(deg, 1, 0))];
    expect(top.x).toBeCloseTo(bottom.x, 9);
    expect(top.y - bottom.y).toBeCloseTo(3, 9);
  },
);

test('law: free flight in a rolled picture gives the same tilt', () => {
  const samples = Array.from({ length: 20 }, (_, i) => {
    const t = i / 60;
    const seen = filmed(5, 3 * t, 1 + 4 * t - 4.903325 * t * t);
    return { t, x: seen.x / 100, y: -seen.y / 100 };
  });
  expect(tiltFromFlight(samples).value).toBeCloseTo(radians(5), 9);
});

test('law: a light ball in air, by Runge-Kutta, in a picture rolled by 5°: the same tilt once its drag is taken off', () => {
  const samples = flown(10, 0.3, 0.02, 40, 100).map(({ t, x, y }) => {
    const seen = filmed(5, x, y);
    return { t, x: seen.x / 100, y: -seen.y / 100 };
  });
  expect(tiltFromFlight(samples, { k: 0.02 }).value).toBeCloseTo(radians(5), 4);
  // Drag of 0.02 /m at 10 m/s slows by 0.2 g: a tilt of many degrees more, if nothing is said of it.
  expect(tiltFromFlight(samples).value).toBeGreaterThan(radians(10));
  const [less, more] = [0.018, 0.022].map((k) => tiltFromFlight(samples, { k }).value);
  const half = Math.abs((more ?? 0) - (less ?? 0)) / 2;
  expect(tiltFromFlight(samples, { k: 0.02, u: 0.002 }).u).toBeCloseTo(half, 2);
});

test('refuses a line without length and a flight of five frames', () => {
  expect(() => tiltFromPlumbLine({ x: 1, y: 1 }, { x: 1, y: 1 }, 1)).toThrow(/no finite value/);
  expect(() => tiltFromFlight([])).toThrow(/tiltFromFlight needs at least 6 frames/);
});
