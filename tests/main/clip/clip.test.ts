import { describe, expect, test } from 'vitest';
import { planClip, truthOf } from '../../../main/clip/clip.ts';
import { project } from '../../../main/clip/camera.ts';
import type { Point } from '../../../main/demo/figure.ts';
import { MOTIONS } from '../../../main/clip/motions/index.ts';
import { MOVEMENTS } from '../../../shared/knowledge/movements/index.ts';

const length = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y);
const options = { seed: 7, captureRateHz: 120, slowMotion: 1, tiltDeg: 0, turnDeg: 0 };
const ids = MOVEMENTS.map(({ id }) => id);

test('every shipped movement can be made', () => {
  expect(Object.keys(MOTIONS).toSorted()).toEqual(ids.toSorted());
});

describe.each(ids)('%s', (movementId) => {
  const movement = MOVEMENTS.find(({ id }) => id === movementId);
  const clip = planClip({ ...options, movementId });
  const { motion } = clip;
  const times = Array.from({ length: Math.floor(motion.lastsS * 240) }, (_, i) => i / 240);

  test('has the events of the movement, in its order, within the clip', () => {
    expect(Object.keys(motion.events)).toEqual(movement?.events.map(({ id }) => id));
    const at = Object.values(motion.events);
    expect(at).toEqual(at.toSorted((a, b) => a - b));
    expect(at[0]).toBeGreaterThanOrEqual(0);
    expect(at.at(-1)).toBeLessThan(motion.lastsS);
  });

  test('law: parts keep their length, feet stay out of the floor, nothing jumps', () => {
    const first = motion.figureAt(0);
    let before = first;
    for (const t of times) {
      const figure = motion.figureAt(t);
      for (const [from, to] of [
        ['hip-right', 'knee-right'],
        ['knee-left', 'ankle-left'],
        ['elbow-right', 'wrist-right'],
      ] as const) {
        const length = (points: typeof figure) =>
          Math.hypot(points[from].x - points[to].x, points[from].y - points[to].y);
        expect(length(figure)).toBeCloseTo(length(first), 9);
      }
      const lowest = Math.min(
        ...(['toe-left', 'toe-right', 'heel-left', 'heel-right'] as const).map((name) => figure[name].y),
      );
      expect(lowest).toBeGreaterThan(-0.05);
      for (const [name, place] of Object.entries(figure)) {
        const was = before[name as keyof typeof before];
        expect([name, t, Math.hypot(place.x - was.x, place.y - was.y) * 240 < 40]).toEqual([name, t, true]);
      }
      before = figure;
    }
  });

  test('law: the same seed gives the same truth, another another', () => {
    const [once, again, other] = [7, 7, 8].map((seed) =>
      JSON.stringify(truthOf(planClip({ ...options, movementId, seed }))),
    );
    expect(again).toBe(once);
    expect(other).not.toBe(once);
  });
});

test('free fall: between take-off and landing the centre of mass of every jump obeys g (9.80665 m/s², standard gravity)', async () => {
  const { wholeBodyCentreOfMass } = await import('../../../shared/kernel/anthropometry/wholeBodyCentreOfMass.ts');
  const { DE_LEVA_MALE } = await import('../../../shared/kernel/anthropometry/deLeva1996.ts');
  for (const movementId of [
    'countermovement-jump',
    'basketball-jump-shot',
    'handball-jump-throw',
    'volleyball-spike',
  ]) {
    const { motion } = planClip({ ...options, movementId });
    const { 'take-off': up = 0, landing = 0 } = motion.events;
    const y = (t: number) => {
      const centre = wholeBodyCentreOfMass(motion.figureAt(t), DE_LEVA_MALE);
      if ('unknown' in centre) throw new Error(centre.unknown);
      return centre.y;
    };
    const [h, t] = [0.05, (up + landing) / 2];
    expect((y(t + h) - 2 * y(t) + y(t - h)) / h ** 2).toBeCloseTo(-9.80665, 2);
  }
});

test('law: a camera square on keeps ratios of lengths; one that leans turns the picture by as much; one turned away squeezes what is far', () => {
  const camera = { ...planClip({ ...options, movementId: 'drop-landing' }).camera };
  const [o, right, up] = [
    { x: 0, y: 1 },
    { x: 1, y: 1 },
    { x: 0, y: 2 },
  ].map((place) => project(camera, place)) as [
    { x: number; y: number },
    { x: number; y: number },
    { x: number; y: number },
  ];
  expect(length(o, right)).toBeCloseTo(camera.pxPerM, 9);
  expect(length(o, up)).toBeCloseTo(camera.pxPerM, 9);
  const leaning = { ...camera, tiltDeg: 10 };
  const [a, b] = [project(leaning, { x: 0, y: 1 }), project(leaning, { x: 1, y: 1 })];
  expect((Math.atan2(-(b.y - a.y), b.x - a.x) * 180) / Math.PI).toBeCloseTo(10, 9);
  const turned = { ...camera, turnDeg: 30 };
  const meter = (x: number) => length(project(turned, { x, y: 0 }), project(turned, { x, y: 1 }));
  expect(meter(camera.lookingAt.x + 2)).toBeLessThan(meter(camera.lookingAt.x - 2));
});
