import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { homography, project } from '../../../../shared/kernel/plane/homography.ts';
import { planeFromCalibration } from '../../../../shared/kernel/plane/planeFromCalibration.ts';
import type { Calibration } from '../../../../shared/model/trial.ts';

const FIELD = [
  [0, 0, 260, 980],
  [4, 0, 698.4733, 923.6641],
  [4, 3, 718.1467, 583.9768],
  [0, 3, 275.3036, 624.4939],
] as const;

function fieldOf(
  points: readonly (readonly [number, number, number, number])[],
  pointUPx: number | null = 1,
): Extract<Calibration, { kind: 'plane' }> {
  return {
    kind: 'plane',
    points: points.map(([xM, yM, xPx, yPx]) => ({ image: { xPx, yPx }, plane: { xM, yM } })),
    pointUPx,
  };
}

test('V1: 2-D DLT, worked plane (computed with a general-purpose library): pixels to metres within 1 mm', () => {
  const { toMetres } = planeFromCalibration(fieldOf(FIELD));
  for (const [px, py, x, y] of [
    [493.1238, 778.4872, 2, 1.5],
    [387.2255, 673.1537, 1, 2.5],
    [595.7447, 880.5609, 3, 0.5],
  ] as const) {
    const point = toMetres({ x: px, y: py });
    expect(point.x).toBeCloseTo(x, 3);
    expect(point.y).toBeCloseTo(y, 3);
  }
});

test('V1: 2-D DLT, worked plane: the eight parameters are 118, 4, 260, -3, -121, 980, 0.012, -0.004', () => {
  const map = homography(
    FIELD.map(([x, y]) => ({ x, y })),
    FIELD.map(([, , x, y]) => ({ x, y })),
  ).to1DArray();
  [118, 4, 260, -3, -121, 980, 0.012, -0.004, 1].forEach((expected, i) => {
    // Corners are printed to 0.0001 px.
    expect(map[i]).toBeCloseTo(expected, i < 6 ? 2 : 5);
  });
});

/** Pinhole camera, f 1200 px, centre (960, 540), 8 m away, 1.2 m high, opposite X = 3, tilted up by some degrees. */
function pinhole(tiltDeg: number) {
  const tilt = (tiltDeg * Math.PI) / 180;
  return (x: number, y: number) => {
    const depth = 8 * Math.cos(tilt) + (y - 1.2) * Math.sin(tilt);
    const up = (y - 1.2) * Math.cos(tilt) - 8 * Math.sin(tilt);
    return { x: 960 + (1200 * (x - 3)) / depth, y: 540 - (1200 * up) / depth };
  };
}

test.each([
  [0, 0, 0],
  [2, 18, 6.5],
  [4, 36, 11.5],
  [6, 52, 14.8],
])(
  'V2: pinhole camera tilted %d° (projective geometry): one length errs by %d mm at the edge, %d mm above; a plane by 0',
  (tilt, edgeMm, aboveMm) => {
    const see = pinhole(tilt);
    const [left, right] = [see(2.5, 1.2), see(3.5, 1.2)];
    const byLength = planeFromCalibration({
      kind: 'length',
      from: { xPx: left.x, yPx: left.y },
      to: { xPx: right.x, yPx: right.y },
      lengthM: 1,
      lengthUM: 0,
      pointUPx: 1,
      tiltDeg: 0,
    });
    const byPlane = planeFromCalibration(
      fieldOf(
        (
          [
            [0, 0],
            [6, 0],
            [6, 3],
            [0, 3],
          ] as const
        ).map(([x, y]) => [x, y, see(x, y).x, see(x, y).y] as const),
      ),
    );
    // By length the origin is arbitrary: the stick's middle stands for (3, 1.2).
    const middle = byLength.toMetres(see(3, 1.2));
    const errorMm = (x: number, y: number) => {
      const p = byLength.toMetres(see(x, y));
      return 1000 * Math.hypot(p.x - middle.x - (x - 3), p.y - middle.y - (y - 1.2));
    };
    expect(Math.abs(errorMm(6, 2.5) - edgeMm)).toBeLessThan(0.6);
    expect(Math.abs(errorMm(3, 2.5) - aboveMm)).toBeLessThan(2);
    const exact = byPlane.toMetres(see(6, 2.5));
    expect(exact.x).toBeCloseTo(6, 9);
    expect(exact.y).toBeCloseTo(2.5, 9);
  },
);

test('V2: projective geometry, camera tilted 4°: the DLT parameters of the same camera', () => {
  const see = pinhole(4);
  const ground = [
    [0, 0],
    [6, 0],
    [6, 3],
    [0, 3],
  ].map(([x, y]) => ({ x: x as number, y: y as number }));
  const map = homography(
    ground,
    ground.map(({ x, y }) => see(x, y)),
  ).to1DArray();
  const expected = [151.96, 8.48017, 504.119, 0, -146.82, 806.71, 0, 0.00883351];
  expected.forEach((value, i) => expect(map[i]).toBeCloseTo(value, i < 6 ? 2 : 7));
});

test('V3: a length read ± 2 px over 412 px is uncertain by 0.485 % (propagation)', () => {
  const plane = planeFromCalibration({
    kind: 'length',
    from: { xPx: 100, yPx: 500 },
    to: { xPx: 512, yPx: 500 },
    lengthM: 1,
    lengthUM: 0,
    pointUPx: Math.SQRT2,
    tiltDeg: 0,
  });
  expect(plane.scaleU).toBeCloseTo(0.00485, 5);
  expect(plane.metresPerPixel?.value).toBeCloseTo(1 / 412, 12);
});

const stick = (fromX: number, fromY: number, toX: number, toY: number, lengthM: number) => ({
  from: { xPx: fromX, yPx: fromY },
  to: { xPx: toX, yPx: toY },
  lengthM,
  lengthUM: 0.002,
});

test('law: several lengths of one scale give that scale, surer than any one of them, with residuals', () => {
  const [one, two, three] = [stick(0, 0, 400, 0, 1), stick(900, 800, 500, 500, 1.25), stick(50, 0, 50, 401, 1)];
  const settings = { kind: 'length', pointUPx: 1, tiltDeg: 0 } as const;
  const all = planeFromCalibration({ ...settings, ...one, others: [two, three] });
  const alone = planeFromCalibration({ ...settings, ...one });
  // Least squares by hand: (400 + 625 + 401) / (400² + 500² + 401²).
  expect(all.metresPerPixel?.value).toBeCloseTo(1426 / 570801, 12);
  expect(all.scaleU).toBeLessThan(alone.scaleU as number);
  expect(all.residualsM).toHaveLength(3);
  expect(all.residualsM[2]).toBeCloseTo(1 - (401 * 1426) / 570801, 9);
  expect(all.warnings).toEqual([]);
  expect(alone.residualsM).toEqual([]);
});

test('V4: lengths across and up that differ by 2 % are said; one that is 20 % off is refused by its place', () => {
  const settings = { kind: 'length', pointUPx: 1, tiltDeg: 0, ...stick(0, 0, 400, 0, 1) } as const;
  expect(planeFromCalibration({ ...settings, others: [stick(0, 0, 0, 408, 1)] }).warnings[0]).toContain('2.0 %');
  expect(() => planeFromCalibration({ ...settings, others: [stick(0, 0, 0, 600, 1)] })).toThrow(
    expect.objectContaining({ code: 'poor-geometry' }),
  );
  expect(() => planeFromCalibration({ ...settings, others: [stick(0, 0, 4, 4, 1)] })).toThrow(
    expect.objectContaining({ code: 'poor-geometry', path: 'calibration.others.0.to' }),
  );
});

test.each(['length', 'plane'] as const)(
  'V5: a pinhole camera 8 m from the scale, something 0.30 m nearer: by %s its lengths are true once corrected',
  (kind) => {
    const see = pinhole(0);
    /** The picture of a place 0.30 m nearer than the scale: larger about where the camera points. */
    const near = (x: number, y: number) => {
      const { x: px, y: py } = see(x, y);
      return { x: 960 + ((px - 960) * 8) / 7.7, y: 540 + ((py - 540) * 8) / 7.7 };
    };
    const depth = { cameraM: 8, bodyNearerM: 0, ballNearerM: 0.3, uM: 0.05, axis: { xPx: 960, yPx: 540 } };
    const [left, right] = [see(2.5, 1.2), see(3.5, 1.2)];
    const corners = [0, 6].flatMap((x) => [0, 3].map((y) => [x, y, see(x, y).x, see(x, y).y] as const));
    const scale =
      kind === 'length'
        ? { ...stick(left.x, left.y, right.x, right.y, 1), kind, pointUPx: 1, tiltDeg: 0 }
        : fieldOf(corners);
    const between = (plane: ReturnType<typeof planeFromCalibration>) => {
      const [a, b] = [plane.toMetres(near(1, 0.5)), plane.toMetres(near(4, 2.5))];
      return { x: b.x - a.x, y: b.y - a.y };
    };
    const body = planeFromCalibration({ ...scale, depth });
    const ball = planeFromCalibration({ ...scale, depth }, 'ball');
    expect(between(body).x / 3).toBeCloseTo(1.03896, 5);
    expect(between(ball).x).toBeCloseTo(3, 9);
    expect(between(ball).y).toBeCloseTo(2, 9);
    // A place at true height 2.5 m is found there, since the camera points level.
    if (kind === 'plane') expect(ball.toMetres(near(4, 2.5)).y).toBeCloseTo(2.5, 9);
    expect(ball.scaleU).toBeGreaterThan(planeFromCalibration(scale).scaleU as number);
    expect(() => planeFromCalibration({ ...scale, depth: { ...depth, ballNearerM: 9 } }, 'ball')).toThrow(
      expect.objectContaining({ code: 'input-out-of-range' }),
    );
  },
);

test('law: image y points down, so a lower pixel is a lower place', () => {
  const plane = planeFromCalibration({
    kind: 'length',
    from: { xPx: 0, yPx: 0 },
    to: { xPx: 100, yPx: 0 },
    lengthM: 1,
    lengthUM: 0.001,
    pointUPx: 1,
    tiltDeg: 0,
  });
  expect(plane.toMetres({ x: 0, y: 200 })).toEqual({ x: 0, y: -2 });
});

test('law: a picture whose down points 10° anticlockwise of true down is turned back upright', () => {
  const plane = planeFromCalibration({
    kind: 'length',
    from: { xPx: 0, yPx: 0 },
    to: { xPx: 100, yPx: 0 },
    lengthM: 1,
    lengthUM: 0.001,
    pointUPx: 1,
    tiltDeg: 10,
  });
  const down = plane.toMetres({ x: 0, y: 100 });
  // Anticlockwise of straight down (0, -1) by 10°: towards +x.
  expect(down.x).toBeCloseTo(Math.sin((10 * Math.PI) / 180), 12);
  expect(down.y).toBeCloseTo(-Math.cos((10 * Math.PI) / 180), 12);
});

test('metres pass through untouched', () => {
  const plane = planeFromCalibration({ kind: 'metres', pointUM: 0.004 });
  expect(plane.toMetres({ x: 1.5, y: -0.25 })).toEqual({ x: 1.5, y: -0.25 });
  expect(plane.pointU).toBe(0.004);
});

test('a fifth point misread by 20 px shows as residuals', () => {
  const see = pinhole(3);
  const points = (
    [
      [0, 0],
      [6, 0],
      [6, 3],
      [0, 3],
      [3, 1.5],
    ] as const
  ).map(([x, y], i) => [x, y, see(x, y).x + (i === 4 ? 20 : 0), see(x, y).y] as const);
  const plane = planeFromCalibration(fieldOf(points));
  expect(Math.max(...plane.residualsM)).toBeGreaterThan(0.02);
  expect(plane.warnings).toEqual([]);
});

test('refuses three of four points in one line', () => {
  const see = pinhole(0);
  const points = (
    [
      [0, 0],
      [3, 0],
      [6, 0],
      [3, 3],
    ] as const
  ).map(([x, y]) => [x, y, see(x, y).x, see(x, y).y] as const);
  expect(() => planeFromCalibration(fieldOf(points))).toThrow(expect.objectContaining({ code: 'poor-geometry' }));
});

test('refuses points all in one corner, and a base of a few pixels', () => {
  const points = FIELD.map(([x, y, px, py]) => [x, y, px / 20, py / 20] as const);
  expect(() => planeFromCalibration(fieldOf(points))).toThrow(/spread them/);
  expect(() =>
    planeFromCalibration({
      kind: 'length',
      from: { xPx: 0, yPx: 0 },
      to: { xPx: 8, yPx: 0 },
      lengthM: 1,
      lengthUM: 0,
      pointUPx: 1,
      tiltDeg: 0,
    }),
  ).toThrow(expect.objectContaining({ code: 'poor-geometry' }));
});

test('refuses places that no plane puts there: two corners swapped', () => {
  const see = pinhole(2);
  const spots = [
    [0, 0],
    [6, 0],
    [6, 3],
    [0, 3],
    [3, 1.5],
    [1.5, 2],
  ] as const;
  const points = spots.map(([x, y], i) => {
    const [sx, sy] = spots[i === 0 ? 1 : i === 1 ? 0 : i] as readonly [number, number];
    return [x, y, see(sx, sy).x, see(sx, sy).y] as const;
  });
  expect(() => planeFromCalibration(fieldOf(points))).toThrow(expect.objectContaining({ code: 'poor-geometry' }));
});

test('law: mapping there and back returns the point', () => {
  const from = FIELD.map(([x, y]) => ({ x, y }));
  const to = FIELD.map(([, , x, y]) => ({ x, y }));
  const there = project(homography(from, to), { x: 1.2, y: 2.2 });
  const back = project(homography(to, from), there);
  expect(back.x).toBeCloseTo(1.2, 9);
  expect(back.y).toBeCloseTo(2.2, 9);
});

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test('law: where the picture is cut or how large it is does not move the places in it', () => {
  fc.assert(
    fc.property(
      number(0.3, 4),
      number(-800, 800),
      number(-800, 800),
      number(0.5, 3.5),
      number(0.5, 2.5),
      (s, dx, dy, x, y) => {
        const see = pinhole(5);
        const shifted = (px: number, py: number) => ({ x: s * px + dx, y: s * py + dy });
        const corners = [
          [0, 0],
          [4, 0],
          [4, 3],
          [0, 3],
          [2, 1],
        ] as const;
        const plane = planeFromCalibration(
          fieldOf(
            corners.map(([X, Y]) => {
              const p = shifted(see(X, Y).x, see(X, Y).y);
              return [X, Y, p.x, p.y] as const;
            }),
          ),
        );
        const found = plane.toMetres(shifted(see(x, y).x, see(x, y).y));
        expect(found.x).toBeCloseTo(x, 7);
        expect(found.y).toBeCloseTo(y, 7);
      },
    ),
    { numRuns: 50 },
  );
});

test('law: a plane of points is as uncertain as its points: twice the reading error, twice the uncertainty', () => {
  const [one, two] = [1, 2].map((u) => planeFromCalibration(fieldOf(FIELD, u)).scaleU as number);
  expect((two as number) / (one as number)).toBeCloseTo(2, 2);
  expect(planeFromCalibration(fieldOf(FIELD, null)).scaleU).toMatch(/not entered/);
});

test('law: a plane measured from something that leans is turned upright about its origin, and keeps every length', () => {
  const field = fieldOf(FIELD);
  if (field.kind !== 'plane') throw new Error('a plane');
  const [as, turned] = [planeFromCalibration(field), planeFromCalibration({ ...field, tiltDeg: 90 })];
  for (const point of [
    { x: 493.1238, y: 778.4872 },
    { x: 387.2255, y: 673.1537 },
  ]) {
    const { x, y } = as.toMetres(point);
    expect(turned.toMetres(point).x).toBeCloseTo(-y, 9);
    expect(turned.toMetres(point).y).toBeCloseTo(x, 9);
  }
});
