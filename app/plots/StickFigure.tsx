import { LIMBS, TRUNK } from '../../shared/knowledge/limbs.ts';
import { BALL, type Landmark } from '../../shared/model/trial.ts';
import { ticks } from './ticks.ts';

export type Point = readonly [x: number, y: number];
export interface Bounds {
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
}

/**
 * The landmarks of one frame joined to a figure, to one scale in both directions. `bounds` are those of the whole
 * trial, so that nothing jumps between frames. Left limbs are dashed, right limbs solid.
 */
export function StickFigure(props: {
  points: ReadonlyMap<string, Point>;
  bounds: Bounds;
  /** True for metres (y up), false for pixels (y down). */
  isYUp: boolean;
  /** Metres to one unit of the coordinates; null: not known, no scale bar. */
  metresPerUnit: number | null;
  /** Where the ball was in other frames. */
  ballPath: readonly Point[];
  label: string;
}) {
  const { points, bounds, isYUp, metresPerUnit, ballPath } = props;
  const tall = Math.max(bounds.maxY - bounds.minY, 1e-9);
  const wide = Math.max(bounds.maxX - bounds.minX, 1e-9);
  // Draw 100 units high, so that line weights and type do not depend on the coordinates' unit.
  const scale = 100 / Math.max(tall, wide / 2);
  const margin = 6;
  const place = ([x, y]: Point): Point => [
    margin + (x - bounds.minX) * scale,
    margin + (isYUp ? bounds.maxY - y : y - bounds.minY) * scale,
  ];
  const width = wide * scale + 2 * margin;
  const height = tall * scale + 2 * margin + 8;
  const at = (name: string) => {
    const point = points.get(name);
    return point === undefined ? null : place(point);
  };
  const bone = ([from, to]: readonly [Landmark, Landmark]) => {
    const a = at(from);
    const b = at(to);
    if (a === null || b === null) return null;
    const isLeft = from.endsWith('left') && to.endsWith('left');
    return (
      <line
        key={`${from} ${to}`}
        className={isLeft ? 'bone bone-left' : 'bone'}
        x1={a[0]}
        y1={a[1]}
        x2={b[0]}
        y2={b[1]}
      />
    );
  };
  const vertex = at('vertex');
  const cervicale = at('cervicale');
  const ball = at(BALL);
  const bar = metresPerUnit === null ? null : scaleBar(wide * metresPerUnit);

  return (
    <svg className="plot stick" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={props.label}>
      {ballPath.length > 0 && (
        <g className="ball-path">
          {ballPath.map((point, i) => {
            const [cx, cy] = place(point);
            // oxlint-disable-next-line react/no-array-index-key -- a frame's place in the path is its identity
            return <circle key={i} cx={cx} cy={cy} r={0.45} />;
          })}
        </g>
      )}
      {TRUNK.map(bone)}
      {LIMBS.map(bone)}
      {vertex !== null && cervicale !== null && (
        <ellipse
          className="bone"
          cx={(vertex[0] + cervicale[0]) / 2}
          cy={(vertex[1] + cervicale[1]) / 2}
          rx={Math.hypot(vertex[0] - cervicale[0], vertex[1] - cervicale[1]) * 0.36}
          ry={Math.hypot(vertex[0] - cervicale[0], vertex[1] - cervicale[1]) / 2}
          transform={`rotate(${(Math.atan2(vertex[0] - cervicale[0], cervicale[1] - vertex[1]) * 180) / Math.PI} ${(vertex[0] + cervicale[0]) / 2} ${(vertex[1] + cervicale[1]) / 2})`}
        />
      )}
      {[...points].map(([name, point]) => {
        const [cx, cy] = place(point);
        if (name === BALL) return null;
        return (
          <circle key={name} className="joint" cx={cx} cy={cy} r={0.8}>
            <title>{name.replace('-', ' ')}</title>
          </circle>
        );
      })}
      {ball !== null && (
        <circle className="ball" cx={ball[0]} cy={ball[1]} r={2.2}>
          <title>ball</title>
        </circle>
      )}
      {bar !== null && metresPerUnit !== null && (
        <g className="scale-bar">
          <path d={`M ${margin} ${height - 5.5} v 2.5 h ${(bar / metresPerUnit) * scale} v -2.5`} />
          <text x={margin + (bar / metresPerUnit) * scale + 2} y={height - 2.4}>
            {bar} m
          </text>
        </g>
      )}
    </svg>
  );
}

/** A round length of about a quarter of the width shown, m. */
function scaleBar(widthM: number): number | null {
  const [, second] = ticks(0, widthM, 4);
  return second ?? null;
}
