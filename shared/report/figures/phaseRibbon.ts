import type { Movement } from '../../knowledge/movement.ts';
import type { TrialEvent } from '../../model/trial.ts';
import { quantityText } from '../../format/number.ts';
import type { Drawing } from '../blocks/figure.ts';
import type { FontMetrics } from '../metrics.ts';
import type { Mark } from '../page.ts';
import { shiftMark } from '../placed.ts';
import { hatch, label, line, rect } from './drawing.ts';
import { linear } from './scale.ts';

const BAND = { top: 0, height: 26 };
const ROW = 11;

/** Phases as bands on one time axis, events as ticks with name and time below. */
export function drawPhaseRibbon(
  movement: Movement,
  events: readonly TrialEvent[],
  width: number,
  metrics: FontMetrics,
): Drawing {
  const timed = [...events].sort((a, b) => a.timeS - b.timeS);
  const times = timed.map((event) => event.timeS);
  const at = linear([Math.min(...times), Math.max(...times)], [6, width - 6]);
  const timeOf = (id: string) => timed.find((event) => event.event === id)?.timeS ?? null;

  const bands: Mark[] = [];
  const phaseLabels: Mark[] = [];
  movement.phases.forEach((phase, i) => {
    const [from, to] = [timeOf(phase.startsAt), timeOf(phase.endsAt)];
    if (from === null || to === null || to <= from) return;
    const [x, w] = [at(from), at(to) - at(from)];
    if (i % 2 === 0) bands.push(rect(x, BAND.top, w, BAND.height, 'tint'));
    else bands.push(...hatch(x, BAND.top, w, BAND.height, 5));
    bands.push(rect(x, BAND.top, w, BAND.height, null, 'muted'));
    const name = label(phase.label, x + w / 2, 0, { face: 'sansBold', size: 8, align: 'middle' }, metrics);
    phaseLabels.push(within(name, width));
  });
  const names = stack(phaseLabels, ROW);
  const bandTop = names.height + 2;
  const bandBottom = bandTop + BAND.height;

  const stated = timed.map((event) => {
    const known = movement.events.find((one) => one.id === event.event);
    const text = `${known?.label ?? event.event} ${quantityText({ value: event.timeS, unit: 's', u: event.uS }, 's')}`;
    return within(label(text, at(event.timeS), 0, { size: 7.5, align: 'middle' }, metrics), width);
  });
  const below = stack(stated, ROW);
  const eventMarks = below.marks.flatMap((mark, i) => {
    const x = at(times[i] ?? 0);
    const top = bandBottom + 3;
    return [line(x, bandTop - 2, x, top + (below.rows[i] ?? 0) * ROW, 0.6, 'muted'), shiftMark(mark, 0, top + ROW - 3)];
  });
  return {
    height: bandBottom + 4 + below.height,
    marks: [
      ...names.marks.map((mark) => shiftMark(mark, 0, ROW - 3)),
      ...bands.map((mark) => shiftMark(mark, 0, bandTop)),
      ...eventMarks,
    ],
  };
}

/** Labels in as many rows as it takes for none to touch its neighbour. */
function stack(labels: readonly Mark[], rowHeight: number): { marks: Mark[]; rows: number[]; height: number } {
  const ends: number[] = [];
  const rows: number[] = [];
  const marks = labels.map((mark) => {
    if (mark.mark !== 'text') return mark;
    let row = ends.findIndex((end) => mark.x > end + 6);
    if (row < 0) row = ends.length;
    ends[row] = mark.x + mark.width;
    rows.push(row);
    return { ...mark, baseline: row * rowHeight };
  });
  return { marks, rows, height: ends.length * rowHeight };
}

function within(mark: Mark, width: number): Mark {
  return mark.mark === 'text' ? { ...mark, x: Math.max(0, Math.min(mark.x, width - mark.width)) } : mark;
}
