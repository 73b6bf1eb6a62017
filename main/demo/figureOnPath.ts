import { DE_LEVA_MALE } from '../../shared/kernel/anthropometry/deLeva1996.ts';
import { wholeBodyCentreOfMass } from '../../shared/kernel/anthropometry/wholeBodyCentreOfMass.ts';
import { LANDMARKS } from '../../shared/model/trial.ts';
import { type Curve, curveThrough } from './curves.ts';
import {
  type Leg,
  lengthsFor,
  plus,
  type Point,
  type Points,
  pointsOf,
  type Pose,
  reach,
  type Side,
} from './figure.ts';

/** A foot on the floor, its toe in one place. */
export interface Stance {
  readonly side: Side;
  readonly from: number;
  readonly to: number;
  readonly toeX: number;
  /** Height of what the foot stands on, m. */
  readonly floorY: number;
  /** How far the heel is lifted, degrees. */
  readonly lift: Curve;
}

export type Legs = Record<Side, (t: number) => Leg>;
type InStance = (side: Side, t: number) => Leg;

export interface OnPath {
  readonly statureM: number;
  /** Of the centre of mass. */
  readonly path: (t: number) => Point;
  readonly posture: (t: number) => Omit<Pose, 'legs'>;
  readonly stances: readonly Stance[];
  /** Legs off the floor, given what they are at the edges of their stances. */
  readonly swinging: (inStance: InStance) => Legs;
}

/** The figure at any instant, its centre of mass on the path. */
export function figureOnPath({ statureM, path, posture, stances, swinging }: OnPath): (t: number) => Points {
  const lengths = lengthsFor(statureM);
  let swing = swinging(() => ({ thigh: 0, knee: 20, foot: 20 }));

  /** The stance legs depend on where the hips are and they on them, through their mass: found in turn. */
  const solve = (t: number): { pose: Pose; hip: Point } => {
    const standing = stances.filter(({ from, to }) => t >= from && t <= to);
    let legs: Record<Side, Leg> = { left: swing.left(t), right: swing.right(t) };
    for (let round = 0; ; round += 1) {
      const pose = { ...posture(t), legs };
      const [target, centre] = [path(t), centreOfMass(pointsOf(pose, lengths))];
      const hip = { x: target.x - centre.x, y: target.y - centre.y };
      if (standing.length === 0 || round === 15) return { pose, hip };
      for (const { side, toeX, floorY, lift } of standing) {
        const foot = lift(t);
        legs = { ...legs, [side]: { ...reach({ x: toeX - hip.x, y: floorY - hip.y }, foot, lengths), foot } };
      }
    }
  };
  swing = swinging((side, t) => solve(t).pose.legs[side]);

  return (t) => {
    const { pose, hip } = solve(t);
    const points = pointsOf(pose, lengths);
    return Object.fromEntries(LANDMARKS.map((name) => [name, plus(points[name], hip)])) as Points;
  };
}

export function centreOfMass(points: Points): Point {
  const centre = wholeBodyCentreOfMass(points, DE_LEVA_MALE);
  if ('unknown' in centre) throw new Error(centre.unknown);
  return centre;
}

/** A leg through given angles; a time alone stands for what the stance there leaves or takes. */
export function legThrough(
  inStance: InStance,
  side: Side,
  ...keys: (readonly [t: number, thigh: number, knee: number, foot: number] | number)[]
): (t: number) => Leg {
  const full = keys.map((key) => {
    if (typeof key !== 'number') return key;
    const { thigh, knee, foot } = inStance(side, key);
    return [key, thigh, knee, foot] as const;
  });
  const [thigh, knee, foot] = [1, 2, 3].map((i) => curveThrough(full.map((key) => [key[0], key[i] ?? 0])));
  return (t: number): Leg => ({ thigh: thigh?.(t) ?? 0, knee: knee?.(t) ?? 0, foot: foot?.(t) ?? 0 });
}
