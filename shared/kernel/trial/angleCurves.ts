import type { Side } from '../../model/parts.ts';
import { isKnown, measured, type Quantity, type Reading, type Unknown } from '../../quantity.ts';
import { flexion } from '../angle/flexion.ts';
import { includedAngle, includedAngleOf } from '../angle/includedAngle.ts';
import { lean, leanOf } from '../angle/lean.ts';
import { centreOf, type Point } from '../plane/point.ts';
import { derive } from '../quantity/derive.ts';
import { readingOr } from './readingOr.ts';
import { pointAt } from './pointSeries.ts';
import type { Scene } from './scene.ts';

/** An angle of the body as it changes: rad, with uncertainty from digitising. */
export interface AngleCurve {
  readonly id: string;
  readonly label: string;
  readonly at: (timeS: number) => Reading<'rad'>;
  /** The bare number, for curves and searches; null where it is unknown. */
  readonly valueAt: (timeS: number) => number | null;
}

type Find = (point: string, timeS: number) => Point | Unknown;

function finder({ points, rateHz, clock }: Scene): Find {
  return (point, timeS) => {
    if (!points.has(point)) return { unknown: `${point} is not digitised` };
    const found = pointAt(points.get(point)?.smooth, timeS, rateHz);
    return found ?? { unknown: `${point} is not digitised in frame ${Math.round(clock.frameAt(timeS))}` };
  };
}

/** The middle of a left and a right point, or whichever of them is digitised. */
function middle(find: Find, part: string, timeS: number): Point | Unknown {
  const [left, right] = [find(`${part}-left`, timeS), find(`${part}-right`, timeS)];
  if ('unknown' in left) return 'unknown' in right ? { unknown: `no ${part} is digitised here` } : right;
  return 'unknown' in right ? left : centreOf([left, right]);
}

function firstMissing(points: readonly (Point | Unknown)[]): Unknown | undefined {
  return points.find((point): point is Unknown => 'unknown' in point);
}

/** A curve from its points at an instant, the angle between them, and the same as a bare number. */
function angleCurve<T extends readonly Point[]>(
  id: string,
  label: string,
  pointsAt: (timeS: number) => { readonly [K in keyof T]: Point | Unknown },
  angle: (...points: T) => Quantity<'rad'>,
  value: (...points: T) => number,
): AngleCurve {
  return {
    id,
    label,
    at(timeS) {
      const points = pointsAt(timeS);
      return firstMissing(points) ?? readingOr(() => angle(...(points as unknown as T)));
    },
    valueAt(timeS) {
      const points = pointsAt(timeS);
      if (firstMissing(points) !== undefined) return null;
      const rad = value(...(points as unknown as T));
      return Number.isNaN(rad) ? null : rad;
    },
  };
}

type Three = readonly [Point, Point, Point];

function hingeFlexion(
  view: Scene,
  id: string,
  label: string,
  side: Side,
  parts: readonly [string, string, string],
): AngleCurve {
  const find = finder(view);
  const [a, b, c] = parts;
  return angleCurve<Three>(
    `${id}.${side}`,
    `${label}, ${side}`,
    (t) => [find(`${a}-${side}`, t), find(`${b}-${side}`, t), find(`${c}-${side}`, t)],
    (p, q, r) => flexion(p, q, r, view.pointU, `${label}, ${side}`),
    (p, q, r) => Math.PI - includedAngleOf(p, q, r),
  );
}

/** Knee flexion of one side frame by frame, rad: 0 straight. */
export function kneeFlexion(view: Scene, side: Side): AngleCurve {
  return hingeFlexion(view, 'knee.flexion', 'Knee flexion', side, ['hip', 'knee', 'ankle']);
}

/** Elbow flexion of one side frame by frame, rad: 0 straight. */
export function elbowFlexion(view: Scene, side: Side): AngleCurve {
  return hingeFlexion(view, 'elbow.flexion', 'Elbow flexion', side, ['shoulder', 'elbow', 'wrist']);
}

/** Upper arm against the line from shoulders to hips: 0 hanging along the trunk, 90° straight out, 180° overhead. */
export function armElevation(view: Scene, side: Side): AngleCurve {
  const find = finder(view);
  const label = `Upper arm against trunk, ${side}`;
  return angleCurve<readonly [Point, Point, Point, Point]>(
    `arm.elevation.${side}`,
    label,
    (t) => [find(`shoulder-${side}`, t), find(`elbow-${side}`, t), middle(find, 'shoulder', t), middle(find, 'hip', t)],
    (shoulder, elbow, neck, hips) =>
      includedAngle(elbow, shoulder, alongTrunk(shoulder, neck, hips), view.pointU, label),
    (shoulder, elbow, neck, hips) => includedAngleOf(elbow, shoulder, alongTrunk(shoulder, neck, hips)),
  );
}

/** The line from the middle of the shoulders to that of the hips, drawn from one shoulder. */
function alongTrunk(shoulder: Point, neck: Point, hips: Point): Point {
  return { x: shoulder.x + hips.x - neck.x, y: shoulder.y + hips.y - neck.y };
}

/** Lean of the trunk frame by frame, rad: 0 upright, forward positive. */
export function trunkLean(view: Scene): AngleCurve {
  const find = finder(view);
  return angleCurve<readonly [Point, Point]>(
    'trunk.lean',
    'Trunk lean',
    (t) => [middle(find, 'hip', t), middle(find, 'shoulder', t)],
    (hips, neck) => lean(hips, neck, view.facing, view.pointU, 'Trunk lean'),
    (hips, neck) => leanOf(hips, neck, view.facing),
  );
}

/**
 * The angle at an event, whose own timing adds to the uncertainty: φ(t) = φ + ω δt, with ω by central difference over
 * two frames.
 */
export function angleAtEvent(view: Scene, curve: AngleCurve, time: Quantity<'s'>): Reading<'rad'> {
  const here = curve.at(time.value);
  if (!isKnown(here)) return here;
  const step = 1 / view.rateHz;
  const [before, after] = [curve.valueAt(time.value - step), curve.valueAt(time.value + step)];
  if (before === null || after === null || time.u === null || time.u === 0) return here;
  return derive(
    {
      symbol: 'φ_t',
      name: `${curve.label} at ${time.working.name.toLowerCase()}`,
      unit: 'rad',
      formula: 'φ_t = φ + ω δt',
      variant: 'δt: how far the true instant may lie from the frame chosen',
      source: { cite: 'First-order effect of timing (JCGM 100:2008, 5.1.2)', status: 'derived' },
    },
    {
      φ: here,
      ω: measured('ω', 'Angular velocity there', (after - before) / (2 * step), 'rad/s', 0),
      δt: measured('δt', `Timing of ${time.working.name.toLowerCase()}`, 0, 's', time.u),
    },
    ({ φ, ω, δt }) => φ + ω * δt,
  );
}

/** A phase with more of its frames missing than this may hide its extreme: a convention. */
const MOST_MISSING = 0.2;

/**
 * The extreme of an angle over a span, frame by frame.
 * @param score what to make greatest: the angle itself, or its size without sign
 */
export function angleExtreme(
  view: Scene,
  curve: AngleCurve,
  span: { readonly start: number; readonly end: number },
  score: (rad: number) => number,
): Reading<'rad'> {
  const first = Math.ceil(span.start * view.rateHz - 1e-6);
  const last = Math.floor(span.end * view.rateHz + 1e-6);
  if (last < first) return curve.at((span.start + span.end) / 2);
  const values = Array.from({ length: last - first + 1 }, (_, i) => curve.valueAt((first + i) / view.rateHz));
  const known = values.flatMap((rad, i) => (rad === null ? [] : [{ rad, frame: first + i }]));
  const best = known.reduce<(typeof known)[number] | null>(
    (top, one) => (top === null || score(one.rad) > score(top.rad) ? one : top),
    null,
  );
  const missing = values.length - known.length;
  if (best === null) return curve.at(first / view.rateHz);
  if (missing > MOST_MISSING * values.length) {
    return {
      unknown: `${missing} of ${values.length} frames of the phase lack a point of ${curve.label.toLowerCase()}`,
    };
  }
  return curve.at(best.frame / view.rateHz);
}
