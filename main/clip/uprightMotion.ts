import { standardGravity } from '../../shared/kernel/constants/standardGravity.ts';
import { type Curve, curveThrough, motionThrough, still } from '../demo/curves.ts';
import { lengthsFor, type Point, type Points, pointsOf, type Pose } from '../demo/figure.ts';
import { centreOfMass, figureOnPath, legThrough, type Stance } from '../demo/figureOnPath.ts';

const G = standardGravity.value;
const FOREVER = 1e6;

/** A figure that stays over its feet: it dips, may leave the floor, lands, and comes to rest. */
export interface Upright {
  readonly statureM: number;
  /** Instants of the body: it begins to sink, is lowest, and leaves the floor or stands again. */
  readonly start: number;
  readonly lowest: number;
  readonly up: number;
  /** How far the centre of mass sinks, in shares of stature. */
  readonly dip: number;
  /** Velocity up as it leaves the floor, m/s; null: the feet stay down. */
  readonly riseMPerS: number | null;
  /** The figure steps off something so high, m, instead of dipping: `up` is when it does. */
  readonly boxM: number;
  readonly trunk: Curve;
  readonly arms: (t: number) => Pose['arms'];
}

export interface UprightBody {
  readonly figureAt: (t: number) => Points;
  readonly landing: number;
  readonly apex: number;
  readonly deepest: number;
  readonly end: number;
}

/** How much lower than standing the centre of mass is where a landing is caught, in shares of stature. */
const ABSORBED = 0.13;
const ABSORBING_S = 0.24;
const RISING_S = 0.6;

export function uprightMotion(upright: Upright): UprightBody {
  const { statureM, start, lowest, up, dip, riseMPerS, boxM, trunk, arms } = upright;
  const lengths = lengthsFor(statureM);
  /** Height of the centre of mass above the toes, with both knees bent so far and the heels lifted so far. */
  const tall = (t: number, knee: number, foot: number): number => {
    const leg = { thigh: knee / 2, knee, foot };
    const posture = { trunk: trunk(t), head: trunk(t) / 3, arms: arms(t), legs: { left: leg, right: leg } };
    const points = pointsOf(posture, lengths);
    return centreOfMass(points).y - points['toe-right'].y;
  };
  const isFall = boxM > 0;
  const leavesAt = isFall ? tall(up, 12, 0) + boxM : tall(up, 14, 45);
  const rise = riseMPerS ?? 0;
  const isInAir = isFall || riseMPerS !== null;
  const apex = up + rise / G;
  const touching = tall(apex + 0.2, 30, 30);
  const landing = isInAir ? apex + Math.sqrt(rise ** 2 + 2 * G * (leavesAt - touching)) / G : up;
  const deepest = landing + ABSORBING_S;
  const end = deepest + RISING_S;
  const low = { t: lowest, x: tall(start, 12, 0) - dip * statureM, v: 0, a: 9 };
  const before = motionThrough(
    isFall
      ? [still(0, leavesAt), still(up, leavesAt)]
      : isInAir
        ? [still(start, tall(start, 12, 0)), low, { t: up, x: leavesAt, v: rise, a: -G }]
        : [still(start, tall(start, 12, 0)), { ...low, a: 3 }, still(up, tall(up, 12, 0))],
  );
  const after = motionThrough([
    { t: landing, x: touching, v: rise - G * (landing - up), a: -G },
    { t: deepest, x: tall(deepest, 12, 0) - ABSORBED * statureM, v: 0, a: 10 },
    still(end, tall(end, 14, 0)),
  ]);
  const path = (t: number): Point => {
    if (t <= up || !isInAir) return { x: 0, y: before(t).x };
    if (t >= landing) return { x: 0, y: after(t).x };
    return { x: 0, y: leavesAt + rise * (t - up) - (G * (t - up) ** 2) / 2 };
  };
  const flat = curveThrough([
    [0, 0],
    [FOREVER, 0],
  ]);
  const pushing = curveThrough([
    [0, 0],
    [lowest, 0],
    [up, isFall ? 0 : 45],
  ]);
  const flattening = curveThrough([
    [landing, 35],
    [landing + 0.06, 0],
  ]);
  const sides = ['left', 'right'] as const;
  const stances: Stance[] = sides.flatMap((side) => {
    const toeX = 0.13 * statureM;
    if (!isInAir) return [{ side, from: 0, to: FOREVER, toeX, floorY: 0, lift: flat }];
    return [
      { side, from: 0, to: up, toeX, floorY: isFall ? boxM : 0, lift: pushing },
      { side, from: landing, to: FOREVER, toeX, floorY: 0, lift: flattening },
    ];
  });
  const figureAt = figureOnPath({
    statureM,
    path,
    posture: (t) => ({ trunk: trunk(t), head: trunk(t) / 3, arms: arms(t) }),
    stances,
    swinging: (inStance) => {
      const middle = [(up + landing) / 2, 8, 16, 42] as const;
      const leg = (side: 'left' | 'right') =>
        isInAir ? legThrough(inStance, side, up, middle, landing) : legThrough(inStance, side, 0, up);
      return { left: leg('left'), right: leg('right') };
    },
  });
  return { figureAt, landing, apex, deepest, end };
}
