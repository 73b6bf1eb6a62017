import type { Side, SideOrNone } from '../../model/parts.ts';
import { isKnown, measured, type Quantity, type Reading } from '../../quantity.ts';
import { outOfPlaneAngle } from '../plane/outOfPlaneAngle.ts';
import { distance, type Point } from '../plane/point.ts';
import { derive } from '../quantity/derive.ts';
import { pointAt } from './pointSeries.ts';
import type { Scene } from './scene.ts';

/** Segments whose angles are reported; each by its two ends. */
const SEGMENTS = [
  ['thigh', 'hip', 'knee'],
  ['shank', 'knee', 'ankle'],
  ['upper arm', 'shoulder', 'elbow'],
  ['forearm', 'elbow', 'wrist'],
] as const;

/**
 * By how much segments are turned out of the plane of motion at the events: how short each looks there against the
 * longest it looks in the clip (its 95th percentile, so that one misread frame does not set it). The worst segment of
 * each side is returned, named. A segment turned throughout looks short throughout and is missed: measured segment
 * lengths would show it.
 *
 * @source foreshortening; 95th percentile: convention
 */
export function segmentTurn(view: Scene): { side: SideOrNone; reading: Reading<'rad'> }[] {
  const times = view.movement.events.flatMap(({ id, label }) => {
    const time = view.eventAt(id);
    return isKnown(time) ? [{ label, t: time.value }] : [];
  });
  const sides = (['left', 'right'] as const).flatMap((side) => {
    const worst = SEGMENTS.flatMap(([name, from, to]) => turns(view, side, name, from, to, times)).toSorted(
      (a, b) => b.value - a.value,
    )[0];
    return worst === undefined ? [] : [{ side, reading: worst }];
  });
  if (sides.length > 0) return sides;
  return [
    { side: 'none', reading: { unknown: times.length === 0 ? 'no event is set' : 'no limb is digitised at an event' } },
  ];
}

function turns(
  view: Scene,
  side: Side,
  name: string,
  from: string,
  to: string,
  times: readonly { label: string; t: number }[],
): Quantity<'rad'>[] {
  const [a, b] = [view.points.get(`${from}-${side}`)?.smooth, view.points.get(`${to}-${side}`)?.smooth];
  const lengths = [...(a ?? [])]
    .flatMap(([frame, end]) => {
      const other = b?.get(frame);
      return other === undefined ? [] : [distance(end, other)];
    })
    .toSorted((p, q) => p - q);
  const longest = lengths[Math.floor(0.95 * (lengths.length - 1))];
  if (longest === undefined || longest <= 0) return [];
  // Pixels do as well as metres here: only the ratio counts.
  const truth = measured('L', `Longest the ${side} ${name} looks`, longest, 'm', twoPoints(view));
  return times.flatMap(({ label, t }) => {
    const [p, q] = [pointAt(a, t, view.rateHz), pointAt(b, t, view.rateHz)];
    if (p === null || q === null) return [];
    const turn = outOfPlaneAngle(apparentLength(view, p, q, `${side} ${name} at ${label.toLowerCase()}`), truth);
    if (!isKnown(turn)) return [];
    return [
      {
        ...turn,
        working: { ...turn.working, name: `Turned out of the plane: ${side} ${name} at ${label.toLowerCase()}` },
      },
    ];
  });
}

/** Both ends of a length misread alike and apart: √2 of one coordinate along it. */
function twoPoints(view: Scene): number | string {
  return typeof view.pointU === 'number' ? Math.SQRT2 * view.pointU : view.pointU;
}

function apparentLength(view: Scene, p: Point, q: Point, name: string): Quantity<'m'> {
  const ends = { x_1: p.x, y_1: p.y, x_2: q.x, y_2: q.y };
  return derive(
    {
      symbol: 'L_app',
      name: `Length seen, ${name}`,
      unit: 'm',
      formula: 'L_app = sqrt((x_2 - x_1)^2 + (y_2 - y_1)^2)',
      source: { cite: 'Plane geometry', status: 'derived' },
    },
    {
      x_1: measured('x_1', 'x of one end', ends.x_1, 'm', view.pointU),
      y_1: measured('y_1', 'y of one end', ends.y_1, 'm', view.pointU),
      x_2: measured('x_2', 'x of the other', ends.x_2, 'm', view.pointU),
      y_2: measured('y_2', 'y of the other', ends.y_2, 'm', view.pointU),
    },
    (l) => Math.hypot(l.x_2 - l.x_1, l.y_2 - l.y_1),
  );
}
