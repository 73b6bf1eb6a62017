import { standardGravity } from '../../shared/kernel/constants/standardGravity.ts';
import { advance, launch } from '../../shared/kernel/flight/path.ts';
import { plus, type Point, type Points, type Side } from '../demo/figure.ts';

const G = standardGravity.value;

/** A place so far beyond the knuckles, along the hand, m. */
export function beyondHand(points: Points, side: Side, beyondM: number): Point {
  const [wrist, knuckle] = [points[`wrist-${side}`], points[`knuckle-${side}`]];
  const share = beyondM / Math.hypot(knuckle.x - wrist.x, knuckle.y - wrist.y);
  return plus(knuckle, { x: (knuckle.x - wrist.x) * share, y: (knuckle.y - wrist.y) * share });
}

/** Free flight with drag from a place, so long after it began. */
export function thrown(from: Point, speedMPerS: number, angleRad: number, dragPerM: number): (s: number) => Point {
  const start = launch(speedMPerS, angleRad, from.y);
  return (s) => {
    const { x, y } = advance(start, s, { drag: dragPerM, lift: 0 });
    return { x: from.x + x, y };
  };
}

/** A toss without drag that passes one place at one time and another at a later time. */
export function tossed(from: Point, t0: number, to: Point, t1: number): (t: number) => Point {
  const T = t1 - t0;
  const [vx, vy] = [(to.x - from.x) / T, (to.y - from.y) / T + (G * T) / 2];
  return (t) => ({ x: from.x + vx * (t - t0), y: from.y + vy * (t - t0) - (G * (t - t0) ** 2) / 2 });
}
