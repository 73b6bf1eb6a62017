import {
  CartesianGrid,
  Line,
  LineChart,
  ReferenceArea,
  ReferenceDot,
  ReferenceLine,
  ResponsiveContainer,
  XAxis,
  YAxis,
} from 'recharts';
import { type PlotHandle, PlotHandles } from './PlotHandles.tsx';
import type { RibbonPhase } from './PhaseRibbon.tsx';
import { ticks } from './ticks.ts';

export interface ForceSeries {
  readonly label: string;
  readonly forcesN: readonly number[];
}

// The chart library writes a fill into each text's own style, which no class can undo.
const INK = { fill: 'var(--ink)' } as const;
const TICK = { className: 'plot-number', fill: 'var(--muted)' } as const;

/**
 * Vertical force against time: the sum heavy, each plate thin and dashed, all named at their own line. Body weight is a
 * level line, the instants found are upright lines with their names, the phases alternate in ground and are named in
 * words along the top.
 */
export function ForcePlot(props: {
  label: string;
  timesS: readonly number[];
  series: readonly ForceSeries[];
  bodyWeightN: number | null;
  instants: readonly { readonly label: string; readonly timeS: number }[];
  phases: readonly RibbonPhase[];
  /** Where the instants may be moved by hand: grips on their lines. */
  grips?: {
    readonly handles: readonly PlotHandle[];
    readonly stepS: number;
    readonly onMove: (id: string, timeS: number) => void;
  };
}) {
  const { timesS, series, bodyWeightN, instants, phases, grips } = props;
  const plates = series.length > 1 ? series : [];
  const rows = timesS.map((timeS, i) => ({
    timeS,
    sum: series.reduce((total, one) => total + (one.forcesN[i] ?? 0), 0),
    ...Object.fromEntries(plates.map((plate, k) => [`plate${k}`, plate.forcesN[i]])),
  }));
  const from = timesS[0] ?? 0;
  const to = timesS.at(-1) ?? 1;
  const peak = Math.max(bodyWeightN ?? 0, ...rows.map((row) => row.sum));
  const yTicks = ticks(0, peak * 1.12, 5);
  const yTop = peak * 1.24;
  const last = rows.at(-1);

  return (
    <figure className="force-plot" aria-label={props.label}>
      <ResponsiveContainer width="100%" height={340}>
        <LineChart
          data={rows}
          margin={{ top: 8, right: 128, bottom: 22, left: 10 }}
          accessibilityLayer
          title={props.label}
        >
          <CartesianGrid stroke="var(--rule)" vertical={false} />
          {phases.map((phase, i) => (
            <ReferenceArea
              key={phase.id}
              x1={phase.fromS}
              x2={phase.toS}
              className={i % 2 === 0 ? 'plot-ground' : 'plot-ground plot-ground-alternate'}
              ifOverflow="hidden"
              label={{ value: phase.label, position: 'insideTop', className: 'plot-label', ...INK }}
            />
          ))}
          <XAxis
            dataKey="timeS"
            type="number"
            domain={[from, to]}
            ticks={[...ticks(from, to, 8)]}
            allowDataOverflow
            className="plot-numbers"
            tick={TICK}
            label={{ value: 'time, s', position: 'insideBottomRight', dy: 18, className: 'plot-label', ...INK }}
          />
          <YAxis
            type="number"
            domain={[0, yTop]}
            ticks={[...yTicks]}
            width={58}
            className="plot-numbers"
            tick={TICK}
            label={{
              value: 'vertical force, N',
              angle: -90,
              position: 'insideLeft',
              dy: 50,
              className: 'plot-label',
              ...INK,
            }}
          />
          {bodyWeightN !== null && (
            <ReferenceLine
              y={bodyWeightN}
              className="plot-reference"
              label={{
                value: `body weight ${Math.round(bodyWeightN)} N`,
                position: 'right',
                className: 'plot-label',
                ...INK,
              }}
            />
          )}
          {plates.map((plate, k) => (
            <Line
              key={plate.label}
              dataKey={`plate${k}`}
              name={plate.label}
              className={k % 2 === 0 ? 'plot-curve-thin' : 'plot-curve-thin plot-curve-dotted'}
              dot={false}
              activeDot={false}
              isAnimationActive={false}
            />
          ))}
          <Line
            dataKey="sum"
            name="sum"
            className="plot-curve"
            dot={false}
            activeDot={false}
            isAnimationActive={false}
          />
          {instants.map((instant) => (
            <ReferenceLine
              key={instant.label}
              x={instant.timeS}
              className="plot-instant"
              ifOverflow="hidden"
              label={{
                value: instant.label,
                position: 'insideBottomLeft',
                angle: -90,
                className: 'plot-label plot-halo',
                ...INK,
              }}
            />
          ))}
          {last !== undefined &&
            byLastForce(plates).map((plate, rank) => (
              <ReferenceDot
                key={plate.label}
                x={last.timeS}
                y={plate.forcesN.at(-1) ?? 0}
                r={0}
                label={{
                  value: plate.label,
                  position: 'right',
                  dy: rank * 14 - (plates.length - 1) * 7,
                  className: 'plot-label',
                  ...INK,
                }}
              />
            ))}
          {grips !== undefined && <PlotHandles {...grips} fromS={from} toS={to} />}
        </LineChart>
      </ResponsiveContainer>
    </figure>
  );
}

/** Highest at the end of the trace first, so that names that must be spread apart keep the order of their lines. */
function byLastForce(plates: readonly ForceSeries[]): readonly ForceSeries[] {
  return plates.toSorted((a, b) => (b.forcesN.at(-1) ?? 0) - (a.forcesN.at(-1) ?? 0));
}
