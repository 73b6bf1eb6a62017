import { useId } from 'react';
import { Hatch } from './Hatch.tsx';
import type { RibbonPhase } from './PhaseRibbon.tsx';
import { ticks } from './ticks.ts';
import { useWidth } from './useWidth.ts';

const PAD = 12;
const HEIGHT = 150;
const TOP = 18;
/** A step this much longer than the usual one is a gap: the line is not drawn across it. */
const GAP_STEPS = 1.5;

/**
 * One curve on the time axis of the ribbon above it, with the same phases as ground. Where points are missing the line
 * stops. Values are in `unit`.
 */
export function CurvePlot(props: {
  label: string;
  unit: string;
  points: readonly (readonly [timeS: number, value: number])[];
  phases: readonly RibbonPhase[];
  fromS: number;
  toS: number;
  playheadS: number | null;
}) {
  const { label, unit, points, phases, fromS, toS, playheadS } = props;
  const [attach, width] = useWidth(720);
  const hatch = useId();
  const values = points.map(([, value]) => value);
  const low = values.reduce((a, b) => Math.min(a, b), Infinity);
  const high = values.reduce((a, b) => Math.max(a, b), -Infinity);
  const slack = Math.max((high - low) * 0.08, 1e-9);
  const x = (timeS: number) => PAD + ((timeS - fromS) / Math.max(toS - fromS, 1e-6)) * (width - 2 * PAD);
  const y = (value: number) => TOP + ((high + slack - value) / (high - low + 2 * slack)) * (HEIGHT - TOP);
  const now = playheadS === null ? null : nearest(points, playheadS);

  return (
    <figure className="curve-plot" ref={attach}>
      <svg
        className="plot"
        viewBox={`0 0 ${width} ${HEIGHT + 6}`}
        role="img"
        aria-label={`${label} over time, from ${low.toFixed(1)} to ${high.toFixed(1)} ${unit}`}
      >
        <defs>
          <Hatch id={hatch} />
        </defs>
        {phases.map(
          (phase, i) =>
            i % 2 === 1 && (
              <rect
                key={phase.id}
                fill={`url(#${hatch})`}
                className="curve-ground"
                x={x(phase.fromS)}
                y={TOP}
                width={Math.max(x(phase.toS) - x(phase.fromS), 0)}
                height={HEIGHT - TOP}
              />
            ),
        )}
        {ticks(low - slack, high + slack, 4).map((value) => (
          <g key={value}>
            <line className="curve-level" x1={PAD} y1={y(value)} x2={width - PAD} y2={y(value)} />
            <text className="plot-number plot-halo" x={PAD} y={y(value) - 3}>
              {value}
            </text>
          </g>
        ))}
        <path className="curve" d={pathOf(points, x, y)} />
        <text className="plot-label" x={PAD} y={12}>
          {label}
          {unit === '' ? '' : `, ${unit}`}
        </text>
        {now !== null && playheadS !== null && (
          <g className="playhead">
            <line x1={x(playheadS)} y1={TOP} x2={x(playheadS)} y2={HEIGHT} />
            <circle cx={x(now[0])} cy={y(now[1])} r={3.5} />
            <text className="plot-label plot-halo" x={width - PAD} y={12} textAnchor="end">
              {`${now[1].toFixed(1)} ${unit} at ${now[0].toFixed(3)} s`}
            </text>
          </g>
        )}
      </svg>
    </figure>
  );
}

function pathOf(
  points: readonly (readonly [number, number])[],
  x: (timeS: number) => number,
  y: (value: number) => number,
): string {
  const steps = points.slice(1).map(([timeS], i) => timeS - (points[i]?.[0] ?? timeS));
  const usual = steps.toSorted((a, b) => a - b)[Math.floor(steps.length / 2)] ?? 0;
  return points
    .map(([timeS, value], i) => {
      const starts = i === 0 || (steps[i - 1] ?? 0) > usual * GAP_STEPS;
      return `${starts ? 'M' : 'L'} ${x(timeS).toFixed(2)} ${y(value).toFixed(2)}`;
    })
    .join(' ');
}

/** The point nearest in time; null if there is none within a twentieth of a second. */
function nearest(points: readonly (readonly [number, number])[], timeS: number): readonly [number, number] | null {
  let best: readonly [number, number] | null = null;
  for (const point of points) {
    if (best === null || Math.abs(point[0] - timeS) < Math.abs(best[0] - timeS)) best = point;
  }
  return best !== null && Math.abs(best[0] - timeS) <= 0.05 ? best : null;
}
