import { formatQuantity, type Quantified, quantityText, withUnit } from '../../format/number.ts';
import { convert, type Unit, UNITS } from '../../units.ts';
import { type Figure, figure } from '../blocks/figure.ts';
import { dot, label, line } from './drawing.ts';
import { linear, ticks } from './scale.ts';

export interface Dot {
  readonly label: string;
  readonly quantity: Quantified;
  readonly isSetAside: boolean;
}

const ROW = 13;
const LABELS = 62;
const AXIS_ROOM = 17;

/** Every trial as a dot with its standard uncertainty, one row each; those set aside are hollow and do not count. */
export function trialDots(name: string, dots: readonly Dot[], unit: Unit): Figure | null {
  const counted = dots.filter((one) => !one.isSetAside);
  if (dots.length < 2 || counted.length === 0) return null;
  const inUnit = (value: number, from: Unit) => convert(value, from, unit);
  const said = dots
    .map((one) => `${one.label} ${quantityText(one.quantity, unit)}${one.isSetAside ? ', set aside' : ''}`)
    .join('; ');
  return figure({
    alt: `${name}, trial by trial: ${said}.`,
    caption: `${name}: every trial with its standard uncertainty. A hollow dot is a trial set aside.`,
    draw: (width, metrics) => {
      const right = Math.min(width, 380);
      const ends = dots.flatMap(({ quantity }) => {
        const u = quantity.u ?? 0;
        return [inUnit(quantity.value - u, quantity.unit), inUnit(quantity.value + u, quantity.unit)];
      });
      const pad = (Math.max(...ends) - Math.min(...ends)) * 0.15 || 1;
      const domain = [Math.min(...ends) - pad, Math.max(...ends) + pad] as const;
      const at = linear(domain, [LABELS, right - 4]);
      const bottom = dots.length * ROW + 2;
      const marks = dots.flatMap(({ label: words, quantity, isSetAside }, i) => {
        const y = i * ROW + ROW / 2 + 1;
        const value = inUnit(quantity.value, quantity.unit);
        const u = inUnit(quantity.u ?? 0, quantity.unit);
        return [
          label(words, 0, y + 2.8, { ink: isSetAside ? 'muted' : 'ink' }, metrics),
          line(LABELS, y, right, y, 0.3, 'rule'),
          ...(u > 0
            ? [
                line(at(value - u), y, at(value + u), y, 1.1),
                line(at(value - u), y - 2.5, at(value - u), y + 2.5, 0.8),
                line(at(value + u), y - 2.5, at(value + u), y + 2.5, 0.8),
              ]
            : []),
          dot(at(value), y, 2.6, isSetAside ? 'paper' : 'ink', 'ink'),
        ];
      });
      const axis = ticks(domain, 5).flatMap((tick) => [
        line(at(tick), bottom, at(tick), bottom + 3, 0.5),
        label(tickWords(tick, unit), at(tick), bottom + 12, { size: 7.5, align: 'middle', ink: 'muted' }, metrics),
      ]);
      return { height: bottom + AXIS_ROOM, marks: [...marks, line(LABELS, bottom, right, bottom, 0.6), ...axis] };
    },
  });
}

function tickWords(value: number, unit: Unit): string {
  return withUnit(formatQuantity({ value, unit, u: 0 }).value, UNITS[unit].label);
}
