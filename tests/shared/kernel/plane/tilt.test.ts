import { expect, test } from 'vitest';
import { tiltFromFlight } from '../../../../shared/kernel/flight/tiltFromFlight.ts';
import { planeFromCalibration } from '../../../../shared/kernel/plane/planeFromCalibration.ts';
import { tiltFromPlumbLine } from '../../../../shared/kernel/plane/tiltFromPlumbLine.ts';

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

test('refuses a line without length and a flight of five frames', () => {
  expect(() => tiltFromPlumbLine({ x: 1, y: 1 }, { x: 1, y: 1 }, 1)).toThrow(/no finite value/);
  expect(() => tiltFromFlight([])).toThrow(/tiltFromFlight needs at least 6 frames/);
});
