import { standardGravity } from '../../shared/kernel/constants/standardGravity.ts';
import { advance, launch, passing } from '../../shared/kernel/flight/path.ts';
import { BALL, LANDMARKS } from '../../shared/model/trial.ts';
import { curve, motionThrough } from './curves.ts';
import { type Leg, plus, type Point, type Pose, type Side } from './figure.ts';
import { figureOnPath, type Legs, legThrough, type Stance } from './figureOnPath.ts';
import type { Motion } from './motion.ts';
import type { RandomSource } from './randomSource.ts';

const G = standardGravity.value;
export const RATE_HZ = 120;

/** Instants in s from the first frame; release and landing follow from the flight of the body. */
const APPROACH_START = 0.1;
const RIGHT_STANCE = [0.22, 0.5] as const;
const PLANT = 0.62;
const TAKEOFF = 0.84;
const COCKED = 0.98;
const LANDING_LASTS = 0.22;
const LAST = 0.35;

/** Frames of free flight before the ball leaves the picture. */
const BALL_FRAMES = 34;
/** A ball of 0.57 m around: invented. */
const BALL_RADIUS_M = 0.0907;
/** The centre of the ball from the knuckles, along the hand, m. */
const BALL_BEYOND_KNUCKLES = 0.1;

export interface InventedThrow {
  readonly statureM: number;
  /** Velocity of the centre of mass at take-off, m/s. */
  readonly rise: number;
  readonly run: number;
  readonly releaseBeforeApexS: number;
  readonly ballSpeedMPerS: number;
  readonly ballDragPerM: number;
  /** From release to the target, and its height. */
  readonly targetDistanceM: number;
  readonly targetHeightM: number;
  /** Where the forearm points when it lies furthest back, degrees from straight down. */
  readonly forearmBackDeg: number;
  /** Standard deviation of digitising, m. */
  readonly noiseM: number;
}

export interface FilmedThrow {
  /** Samples [frame, x, y] in metres, y up, by point. */
  readonly tracks: ReadonlyMap<string, [number, number, number][]>;
  /** s from the first frame. */
  readonly events: Readonly<Record<string, number>>;
}

interface Times {
  readonly release: number;
  readonly landing: number;
  readonly end: number;
}

/**
 * A right-handed jump throw off the left foot, filmed from the side: a figure of stiff parts whose posture follows curves,
 * whose centre of mass follows one path, a parabola while in the air, and whose stance leg reaches for the foot on the
 * floor; and a ball that leaves the hand and then obeys gravity and drag.
 */
export function jumpThrowMotion(invented: InventedThrow): Motion {
  const { path, times } = bodyPath(invented);
  const figureAt = figureOnPath({
    statureM: invented.statureM,
    path,
    posture: throwingPosture(times, invented.forearmBackDeg),
    stances: stancesOf(path, times),
    swinging: (inStance) => swingingLegs(times, inStance),
  });
  const handAt = (t: number): Point => {
    const { 'wrist-right': wrist, 'knuckle-right': knuckle } = figureAt(t);
    const beyond = BALL_BEYOND_KNUCKLES / Math.hypot(knuckle.x - wrist.x, knuckle.y - wrist.y);
    return plus(knuckle, { x: (knuckle.x - wrist.x) * beyond, y: (knuckle.y - wrist.y) * beyond });
  };
  const from = handAt(times.release);
  const { angle, at } = ballFlight(invented, from);
  return {
    movementId: 'handball-jump-throw',
    side: 'right',
    statureM: invented.statureM,
    lastsS: times.end + LAST,
    events: { 'approach-start': APPROACH_START, plant: PLANT, 'take-off': TAKEOFF, cocked: COCKED, ...times },
    figureAt,
    ballAt: (t) => (t <= times.release ? handAt(t) : at(t - times.release)),
    ballRadiusM: BALL_RADIUS_M,
    release: { timeS: times.release, speedMPerS: invented.ballSpeedMPerS, angleRad: angle, heightM: from.y },
    riseMPerS: invented.rise,
  };
}

/** The same as someone digitised it: points with their scatter, frame by frame, events on whole frames. */
export function filmJumpThrow(invented: InventedThrow, random: RandomSource): FilmedThrow {
  const { figureAt, ballAt, events, lastsS, release } = jumpThrowMotion(invented);
  const tracks = new Map<string, [number, number, number][]>([...LANDMARKS, BALL].map((point) => [point, []]));
  const digitise = (point: string, frame: number, { x, y }: Point) => {
    const [seenX, seenY] = [x, y].map((value) => Number((value + random.normal(invented.noiseM)).toFixed(4)));
    tracks.get(point)?.push([frame, seenX ?? x, seenY ?? y]);
  };
  for (let frame = 0; frame <= lastsS * RATE_HZ; frame += 1) {
    const t = frame / RATE_HZ;
    const figure = figureAt(t);
    for (const point of LANDMARKS) digitise(point, frame, figure[point]);
    const ball = ballAt?.(t) ?? null;
    if (ball !== null && t <= (release?.timeS ?? 0) + BALL_FRAMES / RATE_HZ) digitise(BALL, frame, ball);
  }
  return { tracks, events: Object.fromEntries(Object.entries(events).map(([event, t]) => [event, toFrame(t)])) };
}

/** As a person would read it off the film. */
function toFrame(t: number): number {
  return Math.round(t * RATE_HZ) / RATE_HZ;
}

/** The path of the centre of mass, and when its flight puts release and landing. */
function bodyPath({ statureM, rise, run, releaseBeforeApexS }: InventedThrow): {
  path: (t: number) => Point;
  times: Times;
} {
  const scale = statureM / 1.86;
  const [takeoffY, landingY] = [1.265 * scale, 1.11 * scale];
  const apex = TAKEOFF + rise / G;
  const landing = apex + Math.sqrt(rise * rise + 2 * G * (takeoffY - landingY)) / G;
  const end = landing + LANDING_LASTS;
  const height = motionThrough([
    { t: 0, x: 1.02 * scale, v: 0.1, a: 0 },
    { t: 0.36, x: 0.99 * scale, v: 0, a: 3 },
    { t: RIGHT_STANCE[1], x: 1.005 * scale, v: 0.45, a: -G },
    { t: PLANT, x: 1.005 * scale + 0.45 * 0.12 - (G * 0.12 ** 2) / 2, v: 0.45 - G * 0.12, a: -G },
    { t: TAKEOFF, x: takeoffY, v: rise, a: -G },
  ]);
  const absorb = motionThrough([
    { t: landing, x: landingY, v: rise - G * (landing - TAKEOFF), a: -G },
    { t: end, x: 0.87 * scale, v: 0, a: 8 },
    { t: end + LAST, x: 0.92 * scale, v: 0, a: 0 },
  ]);
  const planted = (run + 1.1) * PLANT;
  const leftFloor = planted + (run + 0.5) * (TAKEOFF - PLANT);
  const landed = leftFloor + run * (landing - TAKEOFF);
  const braking = motionThrough([
    { t: PLANT, x: planted, v: run + 1.1, a: 0 },
    { t: TAKEOFF, x: leftFloor, v: run, a: 0 },
  ]);
  const stopping = motionThrough([
    { t: landing, x: landed, v: run, a: 0 },
    { t: end + LAST, x: landed + 0.5, v: 0.2, a: 0 },
  ]);
  return {
    times: { release: apex - releaseBeforeApexS, landing, end },
    path(t) {
      if (t < PLANT) return { x: (run + 1.1) * t, y: height(t).x };
      if (t < TAKEOFF) return { x: braking(t).x, y: height(t).x };
      const s = t - TAKEOFF;
      if (t < landing) return { x: leftFloor + run * s, y: takeoffY + rise * s - (G * s * s) / 2 };
      return { x: stopping(t).x, y: absorb(t).x };
    },
  };
}

function stancesOf(path: (t: number) => Point, times: Times): Stance[] {
  const floorY = 0;
  return [
    {
      side: 'right',
      from: RIGHT_STANCE[0],
      to: RIGHT_STANCE[1],
      toeX: path(0.36).x + 0.1,
      floorY,
      lift: curve([0.36, 0], [0.5, 48]),
    },
    {
      side: 'left',
      from: PLANT,
      to: TAKEOFF,
      toeX: path(0.73).x + 0.29,
      floorY,
      lift: curve([PLANT, 3], [0.66, 0], [0.7, 0], [TAKEOFF, 55]),
    },
    {
      side: 'left',
      from: times.landing,
      to: Infinity,
      toeX: path(times.landing).x + 0.34,
      floorY,
      lift: curve([times.landing, 30], [times.landing + 0.07, 0]),
    },
  ];
}

/** Trunk, head and arms. The throwing arm goes back (−90: level behind), up (−180) and over to the front. */
function throwingPosture({ release, landing, end }: Times, forearmBackDeg: number): (t: number) => Omit<Pose, 'legs'> {
  const trunk = curve([0, 9], [PLANT, -4], [TAKEOFF, -6], [COCKED, -11], [release, 12], [landing, 16], [end, 15]);
  const upper = curve(
    [0, -10],
    [PLANT, -38],
    [TAKEOFF, -84],
    [COCKED, -104],
    [release, -222],
    [release + 0.12, -285],
    [landing, -335],
    [end, -350],
  );
  const fore = curve(
    [0, 55],
    [PLANT, 0],
    [TAKEOFF, -85],
    [COCKED, forearmBackDeg],
    [release, -194],
    [release + 0.1, -290],
    [landing, -350],
    [end, -335],
  );
  const leftUpper = curve([0, 5], [PLANT, -15], [TAKEOFF, 78], [COCKED, 84], [release, 25], [landing, 5], [end, 12]);
  const leftFore = curve([0, 50], [PLANT, 15], [TAKEOFF, 95], [COCKED, 100], [release, 65], [landing, 45], [end, 40]);
  return (t) => ({
    trunk: trunk(t),
    head: trunk(t) / 3,
    arms: { left: { upper: leftUpper(t), fore: leftFore(t) }, right: { upper: upper(t), fore: fore(t) } },
  });
}

/** Legs off the floor, from where one stance leaves them to where the next one takes them. */
function swingingLegs({ release, landing, end }: Times, inStance: (side: Side, t: number) => Leg): Legs {
  const leg = (
    side: Side,
    ...keys: Parameters<typeof legThrough> extends [unknown, unknown, ...infer Keys] ? Keys : never
  ) => legThrough(inStance, side, ...keys);
  return {
    left: leg(
      'left',
      [0, -18, 30, 45],
      [APPROACH_START, -28, 30, 60],
      [0.3, 0, 85, 35],
      [0.5, 42, 50, 10],
      PLANT,
      TAKEOFF,
      [COCKED, -26, 42, 58],
      [release, -16, 30, 50],
      landing,
    ),
    right: leg(
      'right',
      [0, 30, 40, 0],
      RIGHT_STANCE[0],
      RIGHT_STANCE[1],
      [PLANT, -10, 72, 35],
      [TAKEOFF, 66, 92, 20],
      [COCKED, 56, 85, 25],
      [release, 10, 52, 30],
      [landing, 0, 55, 30],
      [end, 12, 92, 35],
    ),
  };
}

/** Where the ball is so long after release, thrown so that it meets the target. */
function ballFlight(invented: InventedThrow, from: Point): { angle: number; at: (t: number) => Point } {
  const air = { drag: invented.ballDragPerM, lift: 0 };
  const missedBy = (angle: number): number => {
    const arrival = passing(launch(invented.ballSpeedMPerS, angle, from.y), invented.targetDistanceM, air);
    return (arrival?.y ?? Number.NEGATIVE_INFINITY) - invented.targetHeightM;
  };
  // The low trajectory: height at the target rises with the angle there. Halving the interval cannot fail.
  let [low, high] = [-0.6, 0.6];
  for (let i = 0; i < 50; i += 1) {
    const middle = (low + high) / 2;
    if (missedBy(middle) < 0) low = middle;
    else high = middle;
  }
  const start = launch(invented.ballSpeedMPerS, low, from.y);
  return {
    angle: low,
    at: (t) => {
      const { x, y } = advance(start, t, air);
      return { x: from.x + x, y };
    },
  };
}
