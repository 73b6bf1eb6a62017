import type { Unit } from '../../units.ts';
import { includedAngleOf } from '../angle/includedAngle.ts';
import type { Point } from '../plane/point.ts';
import { angularVelocity } from '../kinematics/angularVelocity.ts';
import { derivative } from '../signal/derivative.ts';
import { type AngleCurve, armElevation, elbowFlexion, kneeFlexion, trunkLean } from './angleCurves.ts';
import type { Scene } from './scene.ts';

export interface CurveChoice {
  /** `angle:knee.flexion.left`, `turning:knee.flexion.left`, `between:hip-left:knee-left:ankle-left`, `height:ball`, `speed:ball`. */
  readonly id: string;
  readonly label: string;
  readonly unit: Unit;
  readonly group: 'Angles' | 'Turning' | 'Heights' | 'Speeds';
}

/** [seconds, value], frames without a value simply absent. */
export type CurvePoints = readonly (readonly [number, number])[];

export interface TrialCurve extends CurveChoice {
  readonly filtered: CurvePoints;
  /** From the points as digitised, short gaps closed. */
  readonly raw: CurvePoints;
}

/** What the whole body's centre of mass is called among the points. */
export const BODY = 'centre-of-mass';

/** Every curve the points of a trial give: named angles, and height and speed of each point and of the centre of mass. */
export function curveChoices(view: Scene): readonly CurveChoice[] {
  const angles = angleCurves(view)
    .filter(({ valueAt }) => framesOf(view).some((frame) => valueAt(frame / view.rateHz) !== null))
    .flatMap(({ id, label }): CurveChoice[] => [
      { id: `angle:${id}`, label, unit: 'rad', group: 'Angles' },
      { id: `turning:${id}`, label: `Angular velocity, ${inside(label)}`, unit: 'rad/s', group: 'Turning' },
    ]);
  if (view.noMetres !== null) return angles;
  const moving = [...(view.body.smooth.size > 0 ? [BODY] : []), ...view.points.keys()];
  return [
    ...angles,
    ...moving.map(
      (point): CurveChoice => ({
        id: `height:${point}`,
        label: `Height, ${pointWords(point)}`,
        unit: 'm',
        group: 'Heights',
      }),
    ),
    ...moving.map(
      (point): CurveChoice => ({
        id: `speed:${point}`,
        label: `Speed, ${pointWords(point)}`,
        unit: 'm/s',
        group: 'Speeds',
      }),
    ),
    ...(view.body.smooth.size > 0
      ? [{ id: 'rising:', label: 'Vertical velocity, centre of mass', unit: 'm/s', group: 'Speeds' } as const]
      : []),
  ];
}

/**
 * One curve by its id, filtered as the measures are and from the raw points. Angles: rad. Heights: m above the origin of
 * the calibration. Speed: by central differences within unbroken stretches of frames.
 *
 * @returns null for what these points do not give
 * @source derivative, includedAngle and the angles' own
 */
export function trialCurve(view: Scene, id: string): TrialCurve | null {
  const choice = curveChoices(view).find((one) => one.id === id) ?? betweenChoice(id);
  if (choice === null) return null;
  const filtered = curvePoints(view, id);
  return filtered.length === 0 ? null : { ...choice, filtered, raw: curvePoints(unfiltered(view), id) };
}

/** The angle at `b` between `a` and `c`, any three points of the trial. */
export function betweenId(a: string, b: string, c: string): string {
  return ['between', a, b, c].join(':');
}

function betweenChoice(id: string): CurveChoice | null {
  const [kind, a, b, c] = id.split(':');
  if (kind !== 'between' || a === undefined || b === undefined || c === undefined) return null;
  return {
    id,
    label: `Angle at ${pointWords(b)}, from ${pointWords(a)} to ${pointWords(c)}`,
    unit: 'rad',
    group: 'Angles',
  };
}

/** A label as it stands inside a sentence. */
function inside(label: string): string {
  return label.charAt(0).toLowerCase() + label.slice(1);
}

/** A point by its id as read: `hip-left` is hip, left. */
export function pointWords(point: string): string {
  return point.replace(/-(left|right)$/, ', $1').replaceAll('-', ' ');
}

/** The same trial with every point as digitised in the place of the smoothed one. */
function unfiltered(view: Scene): Scene {
  const points = new Map([...view.points].map(([name, series]) => [name, { ...series, smooth: series.raw }]));
  return { ...view, points, body: { ...view.body, smooth: view.body.raw } };
}

/** The named angles of a body. */
export function angleCurves(view: Scene): AngleCurve[] {
  return [
    ...[kneeFlexion, elbowFlexion, armElevation].flatMap((curve) => [curve(view, 'left'), curve(view, 'right')]),
    trunkLean(view),
  ];
}

function framesOf(view: Scene): number[] {
  return [...new Set([...view.points.values()].flatMap(({ smooth }) => [...smooth.keys()]))].toSorted((a, b) => a - b);
}

/**
 * The points of one curve by its id, from the smoothed points; empty for what these do not give.
 *
 * @source derivative, includedAngle and the angles' own
 */
export function curvePoints(view: Scene, id: string): CurvePoints {
  const [kind = '', ...of] = id.split(':');
  const seconds = (frame: number) => frame / view.rateHz;
  switch (kind) {
    case 'angle': {
      const valueAt = angleCurves(view).find((curve) => curve.id === of[0])?.valueAt;
      return framesOf(view).flatMap((frame) => {
        const rad = valueAt?.(seconds(frame)) ?? null;
        return rad === null ? [] : [[seconds(frame), rad] as const];
      });
    }
    case 'turning':
      return runsOf(
        new Map(curvePoints(view, `angle:${of[0]}`).map(([t, rad]) => [Math.round(t * view.rateHz), rad])),
      ).flatMap(({ first, values }) =>
        values.length < 3
          ? []
          : angularVelocity(values, view.rateHz).flatMap((rate, i) =>
              rate === null ? [] : [[seconds(first + i), rate] as const],
            ),
      );
    case 'between': {
      const [a, b, c] = of.map((name) => view.points.get(name)?.smooth);
      return [...(b ?? [])].flatMap(([frame, corner]) => {
        const [from, to] = [a?.get(frame), c?.get(frame)];
        const rad = from === undefined || to === undefined ? Number.NaN : includedAngleOf(from, corner, to);
        return Number.isNaN(rad) ? [] : [[seconds(frame), rad] as const];
      });
    }
    case 'height':
      return runsOf(pathOf(view, of[0])).flatMap(({ first, values }) =>
        values.map(({ y }, i) => [seconds(first + i), y] as const),
      );
    default:
      return runsOf(pathOf(view, kind === 'rising' ? BODY : of[0])).flatMap(({ first, values }) => {
        if (values.length < 3) return [];
        const [vx, vy] = (['x', 'y'] as const).map((axis) =>
          derivative(
            values.map((place) => place[axis]),
            view.rateHz,
            1,
          ),
        );
        return values.flatMap((_, i) => {
          const [x, y] = [vx?.[i] ?? null, vy?.[i] ?? null];
          if (x === null || y === null) return [];
          return [[seconds(first + i), kind === 'rising' ? y : Math.hypot(x, y)] as const];
        });
      });
  }
}

function pathOf(view: Scene, point: string | undefined): ReadonlyMap<number, Point> {
  if (point === BODY) return view.body.smooth;
  return (point === undefined ? undefined : view.points.get(point)?.smooth) ?? new Map();
}

/** Unbroken stretches of frames, in order. */
function runsOf<T>(path: ReadonlyMap<number, T>): { first: number; values: T[] }[] {
  const runs: { first: number; values: T[] }[] = [];
  for (const [frame, value] of [...path].toSorted(([a], [b]) => a - b)) {
    const run = runs.at(-1);
    if (run !== undefined && run.first + run.values.length === frame) run.values.push(value);
    else runs.push({ first: frame, values: [value] });
  }
  return runs;
}
