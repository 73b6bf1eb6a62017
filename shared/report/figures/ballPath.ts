import { quantityText } from '../../format/number.ts';
import { advance, type Air, launch, passing } from '../../kernel/flight/path.ts';
import type { Quantity } from '../../quantity.ts';
import { type Figure, figure } from '../blocks/figure.ts';
import type { FontMetrics } from '../metrics.ts';
import type { Mark } from '../page.ts';
import { dot, label, line, polyline } from './drawing.ts';
import { linear, ticks } from './scale.ts';

export interface BallFlight {
  readonly speed: Quantity<'m/s'>;
  readonly angle: Quantity<'rad'>;
  readonly height: Quantity<'m'>;
  /** Horizontal, from the release. */
  readonly distanceM: number;
  readonly targetHeightM: number;
  readonly air: Air;
}

/** The release a little higher: enough to be seen, little enough to be tried. */
const HIGHER_M = 0.1;
const STEPS = 40;
const [LEFT, RIGHT] = [34, 92];

const metres = (value: number) => quantityText({ value, unit: 'm', u: null });

/** The ball from hand to target from this athlete's own release, and the same throw from a little higher. */
export function ballPath(flight: BallFlight): Figure | null {
  const path = (height: number) => {
    const start = launch(flight.speed.value, flight.angle.value, height);
    const end = passing(start, flight.distanceM, flight.air);
    if (end === null) return null;
    return Array.from({ length: STEPS + 1 }, (_, i) => {
      const { x, y } = advance(start, (end.t * i) / STEPS, flight.air);
      return [x, y] as const;
    });
  };
  const own = path(flight.height.value);
  const moved = path(flight.height.value + HIGHER_M);
  const [arrives, arrivesMoved] = [own?.at(-1)?.[1], moved?.at(-1)?.[1]];
  if (own === null || moved === null || arrives === undefined || arrivesMoved === undefined) return null;
  const gain = `A release ${quantityText({ value: HIGHER_M, unit: 'm', u: null }, 'cm')} higher, all else alike, arrives at ${metres(arrivesMoved)}`;
  return figure({
    alt: `Path of the ball over ${metres(flight.distanceM)}: released at ${metres(flight.height.value)}, it arrives at ${metres(arrives)}; the target is at ${metres(flight.targetHeightM)}. ${gain}.`,
    caption: `Path of the ball from the measured release (solid) to the plane of the target (ring). ${gain} (dashed). Drawn without uncertainty; height and distance to one scale.`,
    draw: (width, metrics) => draw(flight, own, moved, width, metrics),
  });
}

function draw(
  { distanceM, targetHeightM }: BallFlight,
  own: readonly (readonly [number, number])[],
  moved: readonly (readonly [number, number])[],
  width: number,
  metrics: FontMetrics,
) {
  const highest = Math.max(targetHeightM, ...own.map(([, y]) => y), ...moved.map(([, y]) => y));
  const lowest = Math.min(0, ...own.map(([, y]) => y));
  const scale = (width - LEFT - RIGHT) / distanceM;
  const height = Math.min(240, (highest - lowest) * scale) + 8;
  const at = linear([0, distanceM], [LEFT, width - RIGHT]);
  const y = linear([lowest, highest], [height, 8]);
  const curve = (points: readonly (readonly [number, number])[], dash?: readonly number[]) =>
    polyline(
      points.map(([px, py]) => [at(px), y(py)]),
      1.1,
      'ink',
      dash,
    );
  const [endOwn, endMoved] = [y(own.at(-1)?.[1] ?? 0), y(moved.at(-1)?.[1] ?? 0)];
  const apart = Math.abs(endOwn - endMoved) < 10 ? 5 : 0;
  const marks: Mark[] = [
    ...ticks([lowest, highest], 4).flatMap((tick) => [
      line(LEFT - 3, y(tick), LEFT, y(tick), 0.5, 'muted'),
      label(`${Number(tick.toFixed(2))} m`, LEFT - 5, y(tick) + 2.5, { size: 7, align: 'end', ink: 'muted' }, metrics),
    ]),
    ...ticks([0, distanceM], 6).flatMap((tick) => [
      line(at(tick), height, at(tick), height + 3, 0.5),
      label(
        `${Number(tick.toFixed(2))} m`,
        at(tick),
        height + 12,
        { size: 7.5, align: 'middle', ink: 'muted' },
        metrics,
      ),
    ]),
    line(LEFT, height, width - RIGHT, height, 0.5, 'muted'),
    curve(moved, [3, 2]),
    curve(own),
    dot(at(distanceM), y(targetHeightM), 4, null, 'accent'),
    label('as thrown', width - RIGHT + 8, endOwn + apart + 2.5, { size: 7.5 }, metrics),
    label('10 cm higher', width - RIGHT + 8, endMoved - apart + 2.5, { size: 7.5 }, metrics),
  ];
  return { height: height + 16, marks };
}
