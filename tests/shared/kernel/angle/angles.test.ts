import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { apparentInclination } from '../../../../shared/kernel/angle/apparentInclination.ts';
import { flexion } from '../../../../shared/kernel/angle/flexion.ts';
import { includedAngle, includedAngleOf } from '../../../../shared/kernel/angle/includedAngle.ts';
import { lean } from '../../../../shared/kernel/angle/lean.ts';
import { segmentAngle } from '../../../../shared/kernel/angle/segmentAngle.ts';
import { unwrap } from '../../../../shared/kernel/angle/unwrap.ts';

// A crouching figure; its angles were computed outside this program with general-purpose tools.
const SJC = { x: 0, y: 1.44 };
const EJC = { x: 0.1, y: 1.17 };
const WJC = { x: 0.3, y: 1.33 };
const HJC = { x: -0.05, y: 0.92 };
const KJC = { x: 0.1, y: 0.52 };
const AJC = { x: 0, y: 0.09 };
const TTIP = { x: 0.2, y: 0.01 };
const degrees = (rad: number) => (rad * 180) / Math.PI;
const radians = (deg: number) => (deg * Math.PI) / 180;

test.each([
  ['knee', HJC, KJC, AJC, 146.352],
  ['hip', SJC, HJC, KJC, 153.952],
  ['elbow', SJC, EJC, WJC, 71.663],
  ['ankle', KJC, AJC, TTIP, 98.71],
] as const)('stick figure (computed by general-purpose tools): included angle at the %s', (_, a, b, c, expected) => {
  expect(degrees(includedAngle(a, b, c, 0.005).value)).toBeCloseTo(expected, 3);
  expect(degrees(flexion(a, b, c, 0.005).value)).toBeCloseTo(180 - expected, 3);
});

test('stick figure (computed): the trunk leans 5.492° forward, the thigh points to -69.444°', () => {
  expect(degrees(lean(HJC, SJC, 1, 0.005).value)).toBeCloseTo(5.492, 3);
  expect(degrees(lean(HJC, SJC, -1, 0.005).value)).toBeCloseTo(-5.492, 3);
  expect(degrees(segmentAngle(HJC, KJC, 0.005).value)).toBeCloseTo(-69.444, 3);
});

test('a standing knee is 180° inside and 0° bent', () => {
  const [hip, knee, ankle] = [
    { x: 0, y: 0.9 },
    { x: 0, y: 0.5 },
    { x: 0, y: 0.1 },
  ];
  expect(includedAngle(hip, knee, ankle, 0).value).toBeCloseTo(Math.PI, 12);
  expect(flexion(hip, knee, ankle, 0).value).toBeCloseTo(0, 12);
});

test('propagation by hand: one end of a 0.4 m segment misread by 4 mm and the other too turns it by √2 × 0.01 rad', () => {
  expect(segmentAngle({ x: 0, y: 0 }, { x: 0.4, y: 0 }, 0.004).u).toBeCloseTo(Math.SQRT2 * 0.01, 5);
});

test('a straight joint is as uncertain as a bent one: 0.4 m segments, 4 mm per coordinate (propagation by hand)', () => {
  // The joint's own error counts towards both segments: √(1 + 1 + 2²) × 0.01 rad across the line.
  const straight = includedAngle({ x: 0, y: 0.8 }, { x: 0, y: 0.4 }, { x: 0, y: 0 }, 0.004);
  expect(straight.u).toBeCloseTo(Math.sqrt(6) * 0.01, 4);
});

test('without a digitising uncertainty the angle has none either, and says why', () => {
  const angle = includedAngle(HJC, KJC, AJC, 'not entered');
  expect(angle.u).toBeNull();
  expect(angle.uReason).toMatch(/not entered/);
});

test('a segment that points left keeps a small uncertainty across the ±180° seam', () => {
  expect(segmentAngle({ x: 0, y: 0 }, { x: -0.4, y: 0 }, 0.004).u).toBeLessThan(0.02);
});

test.each([
  [10, 45.44],
  [20, 46.78],
  [30, 49.11],
])('V8: parallel projection: 45° in a plane turned %d° looks %d°', (turn, seen) => {
  expect(degrees(apparentInclination(radians(45), radians(turn)))).toBeCloseTo(seen, 2);
});

test('refuses a joint whose points coincide, naming what it needs', () => {
  expect(() => includedAngle(KJC, KJC, AJC, 0)).toThrow(/three different points/);
  expect(() => segmentAngle(KJC, KJC, 0)).toThrow(/two different ends/);
  expect(() => lean(KJC, KJC, 1, 0)).toThrow(/two different ends/);
});

const coordinate = fc.double({ min: -5, max: 5, noNaN: true });
const point = fc.record({ x: coordinate, y: coordinate });

test('law: an included angle does not change when everything is moved, turned, scaled or mirrored', () => {
  fc.assert(
    fc.property(point, point, point, point, fc.double({ min: -3, max: 3, noNaN: true }), (a, b, c, shift, turn) => {
      fc.pre(Math.hypot(a.x - b.x, a.y - b.y) > 0.01 && Math.hypot(c.x - b.x, c.y - b.y) > 0.01);
      const move = (p: { x: number; y: number }) => ({
        x: 2.5 * (p.x * Math.cos(turn) - p.y * Math.sin(turn)) + shift.x,
        y: -2.5 * (p.x * Math.sin(turn) + p.y * Math.cos(turn)) + shift.y,
      });
      expect(includedAngleOf(move(a), move(b), move(c))).toBeCloseTo(includedAngleOf(a, b, c), 7);
    }),
  );
});

test('law: an unwrapped series differs from the wrapped one by whole turns and never jumps by more than half a turn', () => {
  const turning = Array.from({ length: 80 }, (_, i) => 0.3 * i);
  const wrapped = turning.map((angle, i) => (i === 40 ? null : Math.atan2(Math.sin(angle), Math.cos(angle))));
  unwrap(wrapped).forEach((angle, i) => {
    if (i === 40) expect(angle).toBeNull();
    else expect(angle).toBeCloseTo(0.3 * i, 9);
  });
});
