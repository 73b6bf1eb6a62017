import { BALL } from '../../model/trial.ts';
import { isKnown, type Quantity, type Reading, type Unknown, uOf } from '../../quantity.ts';
import { angularRate } from '../kinematics/angularRate.ts';
import { pointSpeed } from '../kinematics/pointSpeed.ts';
import type { Point, PointU } from '../plane/point.ts';
import { type AngleCurve, angleAtEvent } from './angleCurves.ts';
import { bodyScatter } from './bodyScatter.ts';
import { pointAt, SHORTEST_SMOOTHED } from './pointSeries.ts';
import { readingOr } from './readingOr.ts';
import { type Scene, scaleOf } from './scene.ts';
import { angleCurves, BODY, pointWords } from './trialCurves.ts';

/** How the body moves at one event. */
export interface EventKinematics {
  readonly event: string;
  readonly label: string;
  readonly time: Quantity<'s'>;
  readonly angles: readonly {
    readonly id: string;
    readonly label: string;
    readonly angle: Reading<'rad'>;
    readonly velocity: Reading<'rad/s'>;
    readonly acceleration: Reading<'rad/s2'>;
  }[];
  readonly speeds: readonly { readonly point: string; readonly label: string; readonly speed: Reading<'m/s'> }[];
}

/**
 * Every angle of the body with its angular velocity and acceleration, and the speed of every point and of the centre of
 * mass, at each event that has a time. Angles or points that are not digitised there are left out, not guessed; near the
 * end of a digitised stretch, where a filter has one side only to go by, a rate is unknown with that reason.
 *
 * @source angleAtEvent, angularRate, pointSpeed
 */
export function eventKinematics(view: Scene): readonly EventKinematics[] {
  const curves = angleCurves(view);
  return view.movement.events.flatMap(({ id, label }) => {
    const time = view.eventAt(id);
    if (!isKnown(time)) return [];
    return [
      {
        event: id,
        label,
        time,
        angles: curves.flatMap((curve) => anglesAt(view, curve, time)),
        speeds: view.noMetres === null ? speedsAt(view, time.value) : [],
      },
    ];
  });
}

function anglesAt(view: Scene, curve: AngleCurve, time: Quantity<'s'>): EventKinematics['angles'] {
  const angle = angleAtEvent(view, curve, time);
  const here = curve.at(time.value);
  if (!isKnown(angle) || !isKnown(here)) return [];
  const three = around(view, time.value, (timeS) => curve.valueAt(timeS));
  const angleU: PointU = uOf(here);
  const rate = <O extends 1 | 2>(order: O) =>
    'unknown' in three
      ? three
      : readingOr(() => angularRate(three.at, view.rateHz, view.cutoffHz, order, angleU, curve.label));
  return [{ id: curve.id, label: curve.label, angle, velocity: rate(1), acceleration: rate(2) }];
}

function speedsAt(view: Scene, timeS: number): EventKinematics['speeds'] {
  const paths = [
    ...[...view.points].map(([point, { smooth }]) => ({
      point,
      path: smooth,
      plane: point === BALL ? view.ball : view,
    })),
    { point: BODY, path: view.body.smooth, plane: { pointU: bodyScatter(view), scaleU: view.scaleU } },
  ];
  return paths.flatMap(({ point, path, plane }) => {
    if (pointAt(path, timeS, view.rateHz) === null) return [];
    const label = pointWords(point);
    const three = around(view, timeS, (at) => pointAt(path, at, view.rateHz));
    const speed: Reading<'m/s'> =
      'unknown' in three
        ? three
        : readingOr(() =>
            pointSpeed(three.at[0], three.at[2], view.rateHz, view.cutoffHz, plane.pointU, scaleOf(plane), label),
          );
    return [{ point, label, speed }];
  });
}

/** A value in the frame before, here and in the frame after; unknown where the filter has not enough on either side. */
function around<T extends number | Point>(
  { rateHz, cutoffHz }: Scene,
  timeS: number,
  valueAt: (timeS: number) => T | null,
): { readonly at: readonly [T, T, T] } | Unknown {
  const reach = Math.max(SHORTEST_SMOOTHED / 2 / rateHz, 1 / (2 * cutoffHz));
  if (valueAt(timeS - reach) === null || valueAt(timeS + reach) === null) {
    return { unknown: `needs every point of it digitised for ${reach.toFixed(2)} s before and after` };
  }
  const [before, here, after] = [valueAt(timeS - 1 / rateHz), valueAt(timeS), valueAt(timeS + 1 / rateHz)];
  if (before === null || here === null || after === null)
    return { unknown: 'a point of it is missing in a frame here' };
  return { at: [before, here, after] };
}
