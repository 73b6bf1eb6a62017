import { formatQuantity, quantityText, type Quantified, withUnit } from '../../format/number.ts';
import { convert, type Unit, UNITS } from '../../units.ts';
import type { Drawing } from '../blocks/figure.ts';
import type { FontMetrics } from '../metrics.ts';
import type { Mark } from '../page.ts';
import { dot, hatch, label, line } from './drawing.ts';
import { linear } from './scale.ts';

/** From and to in the strip's unit; null: open on that side. */
export type Ground = readonly [number | null, number | null];

/** One measure on its axis: the hatched ground is where the statement holds, the dot the value, the bar ± u. */
export interface BandStrip {
  readonly quantity: Quantified;
  readonly displayUnit: Unit;
  readonly grounds: readonly Ground[];
  readonly unit: Unit;
  /** What holds on the ground: `to work on`. */
  readonly means: string;
}

const AXIS_LENGTH = 330;
const HEIGHT = 40;
const AXIS = 19;
const BAND = 5;

export function drawBandStrip(strip: BandStrip, width: number, metrics: FontMetrics): Drawing {
  const value = convert(strip.quantity.value, strip.quantity.unit, strip.displayUnit);
  const u = convert(strip.quantity.u ?? 0, strip.quantity.unit, strip.displayUnit);
  const shown = (edge: number | null) => (edge === null ? null : convert(edge, strip.unit, strip.displayUnit));
  const grounds = strip.grounds.map(([from, to]) => [shown(from), shown(to)] as const);
  const edges = grounds.flat().filter((edge) => edge !== null);
  const all = [value - u, value + u, ...edges];
  const span = Math.max(...all) - Math.min(...all) || Math.abs(value) * 0.2 || 1;
  const domain = [Math.min(...all) - span * 0.4, Math.max(...all) + span * 0.4] as const;
  const right = Math.min(width, AXIS_LENGTH);
  const at = linear(domain, [0, right]);
  const boxes = grounds.map(([from, to]) => [from === null ? 0 : at(from), to === null ? right : at(to)] as const);
  const marks: Mark[] = [
    ...boxes.flatMap(([from, to]) => hatch(from, AXIS - BAND, to - from, 2 * BAND)),
    line(0, AXIS, right, AXIS, 0.5, 'muted'),
    ...edges.flatMap((edge) => edgeMarks(edge, strip.displayUnit, at, metrics)),
    ...boxes.map(([from, to]) =>
      label(strip.means, (from + to) / 2, AXIS + BAND + 13, { ink: 'muted', size: 7.5, align: 'middle' }, metrics),
    ),
  ];
  if (u > 0) {
    marks.push(line(at(value - u), AXIS, at(value + u), AXIS, 1.4));
    for (const end of [value - u, value + u]) marks.push(line(at(end), AXIS - 3, at(end), AXIS + 3, 0.9));
  }
  const words = label(
    quantityText(strip.quantity, strip.displayUnit),
    at(value),
    AXIS - BAND - 4,
    { face: 'sansBold', align: 'middle' },
    metrics,
  );
  marks.push(dot(at(value), AXIS, 2.6), inside(words, right));
  const apart = spread(marks);
  const lowest = Math.max(...apart.map((mark) => (mark.mark === 'text' ? mark.baseline : 0)));
  return { height: Math.max(HEIGHT, lowest + 4), marks: apart };
}

function edgeMarks(edge: number, unit: Unit, at: (value: number) => number, metrics: FontMetrics): Mark[] {
  const shown = formatQuantity({ value: edge, unit, u: 0 });
  const text = withUnit(shown.value, UNITS[unit].label);
  return [
    line(at(edge), AXIS - BAND - 1, at(edge), AXIS + BAND + 3, 0.9),
    label(text, at(edge), AXIS + BAND + 13, { size: 7.5, align: 'middle' }, metrics),
  ];
}

/** A label moved so that it stays over the axis. */
function inside(mark: Mark, right: number): Mark {
  return mark.mark === 'text' ? { ...mark, x: Math.max(0, Math.min(mark.x, right - mark.width)) } : mark;
}

/** The words below the ground give way to the edge labels: they move beside what they would cover, or drop a line. */
function spread(marks: readonly Mark[]): Mark[] {
  const below = marks.filter((mark) => mark.mark === 'text' && mark.baseline > AXIS);
  return marks.map((mark) => {
    if (mark.mark !== 'text' || mark.ink !== 'muted') return mark;
    const covers = below.some(
      (other) =>
        other !== mark &&
        other.mark === 'text' &&
        other.x < mark.x + mark.width + 4 &&
        mark.x < other.x + other.width + 4,
    );
    return inside(covers ? { ...mark, baseline: mark.baseline + 9 } : mark, AXIS_LENGTH);
  });
}
