import { type Quantified, quantityText } from '../../format/number.ts';
import { convert, type Unit } from '../../units.ts';
import { type Figure, figure } from '../blocks/figure.ts';
import type { FontMetrics } from '../metrics.ts';
import type { Mark } from '../page.ts';
import { dot, hatch, label, line } from './drawing.ts';
import { linear } from './scale.ts';

export interface SidePair {
  readonly label: string;
  readonly left: Quantified | null;
  readonly right: Quantified | null;
  readonly unit: Unit;
  /** A usual range in `unit`, never a pass mark; null: none is known. */
  readonly usual: readonly [number, number] | null;
}

const ROW = 34;

/** Left and right of each measured test on an axis of its own from zero, with ± and the usual range as hatched ground. */
export function sidePairs(pairs: readonly SidePair[], caption: string): Figure | null {
  if (pairs.length === 0) return null;
  const said = pairs.map(
    ({ label: name, left, right, unit }) =>
      `${name}: left ${left === null ? 'not recorded' : quantityText(left, unit)}, right ${right === null ? 'not recorded' : quantityText(right, unit)}`,
  );
  return figure({
    alt: `Left and right side by side. ${said.join('. ')}.`,
    caption,
    draw: (width, metrics) => ({
      height: pairs.length * ROW,
      marks: pairs.flatMap((pair, i) => rowMarks(pair, i * ROW, width, metrics)),
    }),
  });
}

function rowMarks(pair: SidePair, top: number, width: number, metrics: FontMetrics): Mark[] {
  const { unit } = pair;
  const sides = [['L', pair.left] as const, ['R', pair.right] as const].flatMap(([side, quantity]) =>
    quantity === null
      ? []
      : [
          {
            side,
            quantity,
            value: convert(quantity.value, quantity.unit, unit),
            u: convert(quantity.u ?? 0, quantity.unit, unit),
          },
        ],
  );
  const most = Math.max(...sides.map(({ value, u }) => value + u), pair.usual?.[1] ?? 0) * 1.08 || 1;
  const least = Math.min(0, ...sides.map(({ value, u }) => value - u));
  const left = width * 0.36;
  const at = linear([least, most], [left, width - 92]);
  const [upper, lower] = [top + 9, top + 21];
  const ground =
    pair.usual === null ? [] : hatch(at(pair.usual[0]), top + 3, at(pair.usual[1]) - at(pair.usual[0]), 24, 4);
  return [
    label(pair.label, 0, top + 18, { size: 8.5 }, metrics),
    ...ground,
    line(left, top + 2, left, top + 28, 0.6, 'muted'),
    ...sides.flatMap(({ side, quantity, value, u }) => {
      const y = side === 'L' ? upper : lower;
      return [
        label(side, left - 10, y + 2.8, { size: 8, face: 'sansBold' }, metrics),
        line(left, y, at(value), y, 2.4, side === 'L' ? 'accent' : 'ink'),
        ...(u > 0
          ? [
              line(at(value - u), y, at(value + u), y, 0.8),
              line(at(value - u), y - 3, at(value - u), y + 3, 0.8),
              line(at(value + u), y - 3, at(value + u), y + 3, 0.8),
            ]
          : []),
        dot(at(value), y, 2.6, 'ink', 'paper'),
        label(quantityText(quantity, unit), width, y + 2.8, { size: 8, align: 'end' }, metrics),
      ];
    }),
  ];
}
