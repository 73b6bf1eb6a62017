import type { Progress } from '../../assess/progress.ts';
import { formatDate, quantityText } from '../../format/number.ts';
import { convert } from '../../units.ts';
import { type Figure, figure } from '../blocks/figure.ts';
import type { FontMetrics } from '../metrics.ts';
import type { Mark } from '../page.ts';
import { SIDE_WORDS } from '../words.ts';
import { dot, hatch, label, line, polyline } from './drawing.ts';
import { linear } from './scale.ts';

const ROW = 52;
const LABEL = 0.34;

/** Each measure over its days, a row each. Hatched round the value before the last: too near to it to tell apart. */
export function progressLines(rows: readonly Progress[]): Figure | null {
  if (rows.length === 0) return null;
  return figure({
    alt: `Measures over time. ${rows.map(wordsOf).join('. ')}.`,
    caption:
      'Each measure over its days with the standard uncertainty. Hatched: changes that the measure’s own error explains.',
    draw: (width, metrics) => ({
      height: rows.length * ROW,
      marks: rows.flatMap((row, i) => rowMarks(row, i * ROW, width, metrics)),
    }),
  });
}

function nameOf({ label: name, side }: Progress): string {
  return [name, SIDE_WORDS[side]].filter((word) => word !== '').join(', ');
}

/** `Weight-bearing lunge, left: 9.1 cm on 1 March 2026, 12.0 cm on 5 May 2026, real change`. */
function wordsOf(row: Progress): string {
  const days = row.days.map(({ on, quantity }) => `${quantityText(quantity, row.displayUnit)} on ${formatDate(on)}`);
  return `${nameOf(row)}: ${days.join(', ')}, ${row.verdict}`;
}

function rowMarks(row: Progress, top: number, width: number, metrics: FontMetrics): Mark[] {
  const { days, displayUnit, noise, verdict } = row;
  const points = days.map(({ on, quantity }) => ({
    on,
    quantity,
    value: convert(quantity.value, quantity.unit, displayUnit),
    u: convert(quantity.u ?? 0, quantity.unit, displayUnit),
  }));
  const before = points.at(-2);
  const half = noise === null || before === undefined ? 0 : convert(noise, before.quantity.unit, displayUnit);
  const band = before === undefined || half === 0 ? [] : [before.value - half, before.value + half];
  const all = [...band, ...points.flatMap(({ value, u }) => [value - u, value + u])];
  const pad = (Math.max(...all) - Math.min(...all)) * 0.1 || 1;
  const left = width * LABEL;
  const right = width - 96;
  const y = linear([Math.min(...all) - pad, Math.max(...all) + pad], [top + ROW - 20, top + 4]);
  const at = linear([0, days.length - 1], [left + 34, right - 30]);
  const [low = 0, high = 0] = band;
  return [
    label(nameOf(row), 0, top + 16, { size: 8.5 }, metrics),
    label(verdict, 0, top + 27, { size: 8.5, face: 'sansBold' }, metrics),
    ...(band.length === 0 ? [] : hatch(left, y(high), right - left, y(low) - y(high))),
    line(left, top + ROW - 20, right, top + ROW - 20, 0.5, 'muted'),
    polyline(
      points.map(({ value }, i) => [at(i), y(value)]),
      1.1,
    ),
    ...points.flatMap(({ on, value, u }, i) => [
      ...(u > 0 ? [line(at(i), y(value - u), at(i), y(value + u), 0.8)] : []),
      dot(at(i), y(value), 2.6, 'ink', 'paper'),
      label(formatDate(on), at(i), top + ROW - 10, { size: 7.5, ink: 'muted', align: 'middle' }, metrics),
    ]),
    ...points.slice(-2).map(({ quantity, value }, i, two) => {
      // Two values that would touch are moved apart.
      const [a, b] = two.map((one) => y(one.value)) as [number, number];
      const apart = Math.abs(a - b) < 10 ? (i === (a < b ? 0 : 1) ? -5 : 5) : 0;
      const words = `${i < two.length - 1 ? 'was ' : ''}${quantityText(quantity, displayUnit)}`;
      return label(words, width, y(value) + apart + 2.8, { size: 8, align: 'end' }, metrics);
    }),
  ];
}
