import { useId } from 'react';
import { formatQuantity, quantityText, withUnit } from '../../shared/format/number.ts';
import type { Quantity } from '../../shared/quantity.ts';
import { convert, type Unit, UNITS } from '../../shared/units.ts';

const WIDTH = 280;
const AXIS_Y = 30;

/**
 * One measured value against a reference band: the band hatched, the value as a point with a line of one standard
 * uncertainty to either side. An end of the band that is null is open. Numbers stand where they belong; no legend.
 */
export function BandStrip({
  quantity,
  unit = quantity.unit,
  band,
  bandUnit = unit,
  bandWords,
}: {
  quantity: Quantity;
  unit?: Unit;
  band: readonly [number | null, number | null];
  bandUnit?: Unit;
  bandWords: string;
}) {
  const hatch = useId();
  const value = convert(quantity.value, quantity.unit, unit);
  const u = quantity.u === null ? 0 : convert(quantity.u, quantity.unit, unit);
  const [low, high] = band.map((end) => (end === null ? null : convert(end, bandUnit, unit)));
  const points = [value - u, value + u, low, high].filter((point) => typeof point === 'number');
  const [least, most] = [Math.min(...points), Math.max(...points)];
  const pad = (most - least || Math.abs(value) || 1) * 0.25;
  const x = (at: number) => ((at - least + pad) / (most - least + 2 * pad)) * WIDTH;
  const [from, to] = [typeof low === 'number' ? x(low) : 0, typeof high === 'number' ? x(high) : WIDTH];
  const endText = (end: number) => formatQuantity({ value: end, unit, u: null }).value;
  const words = `${quantityText(quantity, unit)}. ${bandWords}: ${rangeWords(low, high, unit)}.`;
  return (
    <figure className="band-strip">
      <svg viewBox={`0 0 ${WIDTH} 58`} role="img" aria-label={words}>
        <pattern id={hatch} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line className="hatch-line" x1="0" y1="0" x2="0" y2="5" />
        </pattern>
        <rect
          className="band-ground"
          fill={`url(#${hatch})`}
          x={from}
          y={AXIS_Y - 10}
          width={Math.max(to - from, 1)}
          height="20"
        />
        {[low, high].map(
          (end) =>
            typeof end === 'number' && (
              <g key={end}>
                <line className="band-end" x1={x(end)} x2={x(end)} y1={AXIS_Y - 13} y2={AXIS_Y + 13} />
                <text className="band-text" x={x(end)} y={AXIS_Y + 25} textAnchor="middle">
                  {endText(end)}
                </text>
              </g>
            ),
        )}
        <line className="band-u" x1={x(value - u)} x2={x(value + u)} y1={AXIS_Y} y2={AXIS_Y} />
        <circle className="band-point" cx={x(value)} cy={AXIS_Y} r="4.5" />
        <text className="band-text band-value" x={x(value)} y={AXIS_Y - 17} textAnchor="middle">
          {formatQuantity(quantity, unit).value}
        </text>
      </svg>
      <figcaption>
        {bandWords}: {rangeWords(low, high, unit)}
      </figcaption>
    </figure>
  );
}

function rangeWords(low: number | null | undefined, high: number | null | undefined, unit: Unit): string {
  const say = (end: number) => formatQuantity({ value: end, unit, u: null }).value;
  const label = UNITS[unit].label;
  if (typeof low === 'number' && typeof high === 'number') return withUnit(`${say(low)} to ${say(high)}`, label);
  if (typeof low === 'number') return `from ${withUnit(say(low), label)} up`;
  if (typeof high === 'number') return `up to ${withUnit(say(high), label)}`;
  return 'open';
}
