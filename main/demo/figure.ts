import type { Landmark } from '../../shared/model/trial.ts';

/** A plane figure of stiff parts, seen from the side: x forward, y up, metres; angles in degrees. */

export interface Point {
  readonly x: number;
  readonly y: number;
}
export type Points = Readonly<Record<Landmark, Point>>;
export type Side = 'left' | 'right';

/**
 * Angles of the parts. Trunk and head from straight up, all others from straight down; forward is positive. `foot` is
 * how far the heel is lifted above the toes.
 */
export interface Leg {
  readonly thigh: number;
  readonly knee: number;
  readonly foot: number;
}
export interface Pose {
  readonly trunk: number;
  readonly head: number;
  readonly arms: Readonly<Record<Side, { readonly upper: number; readonly fore: number }>>;
  readonly legs: Readonly<Record<Side, Leg>>;
}

/** Lengths in m. Proportions of stature invented, near those of common tables. */
export function lengthsFor(statureM: number) {
  const part = (share: number) => share * statureM;
  return {
    trunk: part(0.288),
    neck: part(0.03),
    head: part(0.16),
    upperArm: part(0.186),
    forearm: part(0.146),
    hand: part(0.05),
    thigh: part(0.245),
    shank: part(0.246),
    ankle: part(0.039),
    heelBack: part(0.035),
    toeForward: part(0.117),
  };
}
export type Lengths = ReturnType<typeof lengthsFor>;

const DEG = Math.PI / 180;
export const plus = (a: Point, b: Point): Point => ({ x: a.x + b.x, y: a.y + b.y });
const down = (length: number, angle: number): Point => ({
  x: length * Math.sin(angle * DEG),
  y: -length * Math.cos(angle * DEG),
});
const up = (length: number, angle: number): Point => ({
  x: length * Math.sin(angle * DEG),
  y: length * Math.cos(angle * DEG),
});

/** Vector from the ankle to a point of the foot that lies `forward` of it on the sole, with the heel lifted by `lift`. */
function onSole(lengths: Lengths, forward: number, lift: number): Point {
  const [cos, sin] = [Math.cos(lift * DEG), Math.sin(lift * DEG)];
  return { x: forward * cos - lengths.ankle * sin, y: -forward * sin - lengths.ankle * cos };
}

/** Where all 20 landmarks are, hips at the origin. Both hips and both shoulders share a place, as a side view shows them. */
export function pointsOf(pose: Pose, lengths: Lengths): Points {
  const hip = { x: 0, y: 0 };
  const shoulder = up(lengths.trunk, pose.trunk);
  const cervicale = plus(shoulder, up(lengths.neck, pose.trunk));
  const arm = (side: Side) => {
    const { upper, fore } = pose.arms[side];
    const elbow = plus(shoulder, down(lengths.upperArm, upper));
    const wrist = plus(elbow, down(lengths.forearm, fore));
    return { elbow, wrist, knuckle: plus(wrist, down(lengths.hand, fore)) };
  };
  const leg = (side: Side) => {
    const { thigh, knee: bend, foot } = pose.legs[side];
    const knee = down(lengths.thigh, thigh);
    const ankle = plus(knee, down(lengths.shank, thigh - bend));
    return {
      knee,
      ankle,
      heel: plus(ankle, onSole(lengths, -lengths.heelBack, foot)),
      toe: plus(ankle, onSole(lengths, lengths.toeForward, foot)),
    };
  };
  const [leftArm, rightArm, leftLeg, rightLeg] = [arm('left'), arm('right'), leg('left'), leg('right')];
  return {
    vertex: plus(cervicale, up(lengths.head, pose.head)),
    cervicale,
    'shoulder-left': shoulder,
    'shoulder-right': shoulder,
    'elbow-left': leftArm.elbow,
    'elbow-right': rightArm.elbow,
    'wrist-left': leftArm.wrist,
    'wrist-right': rightArm.wrist,
    'knuckle-left': leftArm.knuckle,
    'knuckle-right': rightArm.knuckle,
    'hip-left': hip,
    'hip-right': hip,
    'knee-left': leftLeg.knee,
    'knee-right': rightLeg.knee,
    'ankle-left': leftLeg.ankle,
    'ankle-right': rightLeg.ankle,
    'heel-left': leftLeg.heel,
    'heel-right': rightLeg.heel,
    'toe-left': leftLeg.toe,
    'toe-right': rightLeg.toe,
  };
}

/** Thigh and knee angles that put the toe of a foot with its heel lifted by `lift` at a place given from the hip. */
export function reach(toe: Point, lift: number, lengths: Lengths): { thigh: number; knee: number } {
  const sole = onSole(lengths, lengths.toeForward, lift);
  const ankle = { x: toe.x - sole.x, y: toe.y - sole.y };
  const { thigh, shank } = lengths;
  const distance = Math.min(Math.hypot(ankle.x, ankle.y), (thigh + shank) * 0.9999);
  const angle = (opposite: number, a: number, b: number) =>
    Math.acos(Math.min(1, Math.max(-1, (a * a + b * b - opposite * opposite) / (2 * a * b)))) / DEG;
  const direction = Math.atan2(ankle.x, -ankle.y) / DEG;
  return { thigh: direction + angle(shank, thigh, distance), knee: 180 - angle(distance, thigh, shank) };
}
