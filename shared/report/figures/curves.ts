import type { Movement } from '../../knowledge/movement.ts';
import { lowerFirst } from '../../format/letterCase.ts';
import { formatQuantity, withUnit } from '../../format/number.ts';
import type { TrialSeries } from '../../kernel/trial/measureTrial.ts';
import type { TrialEvent } from '../../model/trial.ts';
import { convert, type Unit, UNITS } from '../../units.ts';
import { type Figure, figure } from '../blocks/figure.ts';
import type { FontMetrics } from '../metrics.ts';
import type { Mark } from '../page.ts';
import { label, line, polyline, rect } from './drawing.ts';
import { type PhaseSpan, phaseSpans } from './phaseSpans.ts';
import { linear, type Scale, ticks } from './scale.ts';

const ROW = 66;
const ROW_GAP = 10;
const LEFT = 40;
const RIGHT = 36;
const AXIS_ROOM = 26;

/** Units that people read curves in. */
const SHOWN_IN: Readonly<Partial<Record<Unit, Unit>>> = { rad: 'deg' };

/**
 * Curves over the phases of a trial, one row for each measure on one time axis; left dashed, right solid, named at their
 * ends. Bands are the phases, lines the events.
 */
export function curves(
  series: readonly TrialSeries[],
  events: readonly TrialEvent[],
  movement: Movement,
): Figure | null {
  const times = events.map((event) => event.timeS);
  if (times.length < 2) return null;
  const span = [Math.min(...times), Math.max(...times)] as const;
  const rows = rowsOf(series, span);
  if (rows.length === 0 || span[0] === span[1]) return null;
  // Every other phase is shaded.
  const shaded = phaseSpans(movement, events).filter((_, i) => i % 2 === 0);
  return figure({
    alt: `Curves over time with the phases of the trial: ${rows.map((row) => row.alt).join('; ')}.`,
    caption: `${sidesWords(rows)}${shadedWords(shaded)}Upright lines are the events: ${eventWords(movement, events)}. Smoothed; drawn without uncertainty.`,
    draw: (width, metrics) => {
      const at = linear(span, [LEFT, width - RIGHT]);
      const bottom = rows.length * (ROW + ROW_GAP) - ROW_GAP;
      return {
        height: bottom + AXIS_ROOM,
        marks: [
          ...shaded.map(({ startS, endS }) => rect(at(startS), 0, at(endS) - at(startS), bottom, 'tint')),
          ...events.map(({ timeS }) => line(at(timeS), 0, at(timeS), bottom, 0.4, 'muted')),
          ...rows.flatMap((row, i) => rowMarks(row, i * (ROW + ROW_GAP), at, width, metrics)),
          ...timeAxis(span, at, bottom, metrics),
        ],
      };
    },
  });
}

function sidesWords(rows: readonly Row[]): string {
  return rows.some(({ lines }) => lines.some(({ side }) => side !== null)) ? 'Left dashed, right solid. ' : '';
}

function shadedWords(shaded: readonly PhaseSpan[]): string {
  return shaded.length === 0 ? '' : `Shaded: ${shaded.map(({ label }) => label.toLowerCase()).join(', ')}. `;
}

/** In the order of their lines. */
function eventWords({ events: known }: Movement, events: readonly TrialEvent[]): string {
  const named = events
    .toSorted((a, b) => a.timeS - b.timeS)
    .map(({ event }) => known.find(({ id }) => id === event)?.label ?? event);
  return named.map(lowerFirst).join(', ');
}

interface Row {
  readonly label: string;
  readonly unit: Unit;
  readonly lines: readonly { readonly side: 'left' | 'right' | null; readonly points: TrialSeries['points'] }[];
  readonly alt: string;
}

/** Left and right of one measure share a row. */
function rowsOf(series: readonly TrialSeries[], [from, to]: readonly [number, number]): Row[] {
  const rows = new Map<string, Row>();
  for (const { id, label: name, unit, points } of series) {
    const shown = SHOWN_IN[unit] ?? unit;
    const inside = points
      .filter(([t]) => t >= from && t <= to)
      .map(([t, value]) => [t, convert(value, unit, shown)] as const);
    if (inside.length < 2) continue;
    const side = (['left', 'right'] as const).find((one) => `${id} ${name}`.includes(one)) ?? null;
    const what = name.replace(/[,\s]*\b(left|right)\b/, '');
    const known = rows.get(what);
    const lines = [...(known?.lines ?? []), { side, points: inside }];
    rows.set(what, {
      label: what,
      unit: shown,
      lines,
      alt: `${what}, ${rangeWords(
        lines.flatMap((one) => one.points),
        shown,
      )}`,
    });
  }
  return [...rows.values()];
}

function rangeWords(points: TrialSeries['points'], unit: Unit): string {
  const values = points.map(([, value]) => value);
  return `from ${numberWords(Math.min(...values), unit)} to ${numberWords(Math.max(...values), unit)}`;
}

function rowMarks(
  { label: name, unit, lines }: Row,
  top: number,
  atTime: Scale,
  width: number,
  metrics: FontMetrics,
): Mark[] {
  const values = lines.flatMap(({ points }) => points.map(([, value]) => value));
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const pad = (high - low) * 0.08 || 1;
  const y = linear([low - pad, high + pad], [top + ROW, top + 12]);
  const marks: Mark[] = [line(LEFT, top + ROW, width - RIGHT, top + ROW, 0.5, 'muted')];
  for (const tick of ticks([low, high], 3)) {
    marks.push(
      line(LEFT - 3, y(tick), LEFT, y(tick), 0.5, 'muted'),
      label(numberWords(tick, unit), LEFT - 5, y(tick) + 2.5, { size: 7, align: 'end', ink: 'muted' }, metrics),
    );
  }
  marks.push(label(name, LEFT + 3, top + 8, { size: 8, face: 'sansBold' }, metrics));
  const ends: number[] = [];
  for (const { side, points } of lines) {
    marks.push(
      polyline(
        points.map(([t, value]) => [atTime(t), y(value)]),
        1.1,
        'ink',
        side === 'left' ? [2.6, 2] : undefined,
      ),
    );
    const last = points.at(-1);
    if (side === null || last === undefined) continue;
    // Two names that would touch are moved apart.
    const taken = ends.find((end) => Math.abs(end - y(last[1])) < 9);
    const end = taken === undefined ? y(last[1]) : taken + (y(last[1]) < taken ? -9 : 9);
    ends.push(end);
    marks.push(label(side, width - RIGHT + 3, end + 2.5, { size: 7.5 }, metrics));
  }
  return marks;
}

function timeAxis(span: readonly [number, number], at: Scale, bottom: number, metrics: FontMetrics): Mark[] {
  return ticks(span, 6).flatMap((tick) => [
    line(at(tick), bottom, at(tick), bottom + 3, 0.5),
    label(numberWords(tick, 's'), at(tick), bottom + 12, { size: 7.5, align: 'middle', ink: 'muted' }, metrics),
  ]);
}

function numberWords(value: number, unit: Unit): string {
  const rounded = Number(value.toPrecision(3));
  return withUnit(formatQuantity({ value: rounded, unit, u: 0 }).value, UNITS[unit].label);
}
