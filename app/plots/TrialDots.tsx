import { useId } from 'react';
import { Hatch } from './Hatch.tsx';
import { ticks } from './ticks.ts';
import { useWidth } from './useWidth.ts';

export interface TrialDot {
  readonly id: string;
  readonly label: string;
  readonly value: number;
  readonly u: number | null;
  readonly isSetAside: boolean;
}

const LEFT = 74;
const RIGHT = 20;
const ROW = 22;

/**
 * Every trial as its own point with its standard uncertainty, one row each, on one axis in `unit`; their mean as an
 * upright line with a hatched ground one standard deviation to either side. A trial set aside is drawn open.
 */
export function TrialDots(props: {
  dots: readonly TrialDot[];
  unit: string;
  quantity: string;
  mean: number | null;
  sd: number | null;
}) {
  const { dots, unit, mean, sd } = props;
  const [attach, width] = useWidth(560);
  const hatch = useId();
  const lows = dots.map((dot) => dot.value - (dot.u ?? 0));
  const highs = dots.map((dot) => dot.value + (dot.u ?? 0));
  if (mean !== null && sd !== null) {
    lows.push(mean - sd);
    highs.push(mean + sd);
  }
  const low = Math.min(...lows);
  const high = Math.max(...highs);
  const slack = Math.max((high - low) * 0.12, Math.abs(high) * 0.01, 1e-6);
  const x = (value: number) => LEFT + ((value - (low - slack)) / (high - low + 2 * slack)) * (width - LEFT - RIGHT);
  const axisY = 20 + dots.length * ROW;

  return (
    <figure className="trial-dots" ref={attach}>
      <svg
        className="plot"
        viewBox={`0 0 ${width} ${axisY + 24}`}
        role="img"
        aria-label={`${props.quantity}, ${unit}: ${dots.map((dot) => `${dot.label} ${dot.value.toFixed(1)}${dot.isSetAside ? ' (set aside)' : ''}`).join(', ')}`}
      >
        <defs>
          <Hatch id={hatch} />
        </defs>
        {mean !== null && sd !== null && sd > 0 && (
          <rect
            fill={`url(#${hatch})`}
            x={x(mean - sd)}
            y={16}
            width={x(mean + sd) - x(mean - sd)}
            height={axisY - 16}
          />
        )}
        {mean !== null && (
          <g>
            <line className="plot-reference" x1={x(mean)} y1={16} x2={x(mean)} y2={axisY} />
            <text className="plot-label plot-halo" x={x(mean)} y={11} textAnchor="middle">
              mean{sd === null ? '' : ' ± SD'}
            </text>
          </g>
        )}
        {dots.map((dot, i) => {
          const y = 18 + (i + 0.5) * ROW;
          return (
            <g key={dot.id}>
              <text className="plot-label" x={0} y={y + 4.5}>
                {dot.label}
              </text>
              {dot.u !== null && (
                <line className="plot-error" x1={x(dot.value - dot.u)} y1={y} x2={x(dot.value + dot.u)} y2={y} />
              )}
              <circle
                className={dot.isSetAside ? 'plot-dot plot-dot-open' : 'plot-dot'}
                cx={x(dot.value)}
                cy={y}
                r={4.5}
              />
            </g>
          );
        })}
        <line className="plot-axis" x1={LEFT} y1={axisY} x2={width - RIGHT} y2={axisY} />
        {ticks(low - slack, high + slack, Math.max(2, Math.floor(width / 110))).map((value) => (
          <g key={value}>
            <line className="plot-axis" x1={x(value)} y1={axisY} x2={x(value)} y2={axisY + 4} />
            <text className="plot-number" x={x(value)} y={axisY + 17} textAnchor="middle">
              {value}
            </text>
          </g>
        ))}
        <text className="plot-number" x={LEFT - 8} y={axisY + 17} textAnchor="end">
          {unit}
        </text>
      </svg>
    </figure>
  );
}
