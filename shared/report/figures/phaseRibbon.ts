import type { Movement } from '../../knowledge/movement.ts';
import type { TrialEvent } from '../../model/trial.ts';
import { formatQuantity, withUnit } from '../../format/number.ts';
import type { Drawing } from '../blocks/figure.ts';
import type { FontMetrics } from '../metrics.ts';
import type { Face } from '../page.ts';
import { hatch, label, line, rect } from './drawing.ts';
import { phaseSpans } from './phaseSpans.ts';
import { linear } from './scale.ts';

const BAND_HEIGHT = 24;
const ROW = 10.5;
const GAP = 7;

/** Phases as bands on one time axis; each name and each event stands to the right of the instant it belongs to. */
export function drawPhaseRibbon(
  movement: Movement,
  events: readonly TrialEvent[],
  width: number,
  metrics: FontMetrics,
): Drawing {
  const timed = events.toSorted((a, b) => a.timeS - b.timeS);
  const words = timed.map((event) => {
    const name = movement.events.find((one) => one.id === event.event)?.label ?? event.event;
    return `${name} ${withUnit(formatQuantity({ value: event.timeS, unit: 's', u: null }).value, 's')}`;
  });
  const lastWidth = labelWidth(words.at(-1) ?? '', 'sans', metrics);
  const times = timed.map((event) => event.timeS);
  const at = linear([Math.min(...times), Math.max(...times)], [0.5, width - lastWidth - 4]);
  const spans = phaseSpans(movement, timed).map((phase, i) => ({
    label: phase.label,
    i,
    x: at(phase.startS),
    end: at(phase.endS),
  }));

  const names = stack(
    spans.map((span) => ({ text: span.label, x: span.x })),
    'sansBold',
    metrics,
  );
  const top = names.height + 3;
  const bottom = top + BAND_HEIGHT;
  const below = stack(
    timed.map((event, i) => ({ text: words[i] ?? '', x: at(event.timeS) })),
    'sans',
    metrics,
  );
  return {
    height: bottom + below.height + 4,
    marks: [
      ...spans.flatMap(({ i, x, end }) => [
        ...(i % 2 === 0 ? [rect(x, top, end - x, BAND_HEIGHT, 'tint')] : hatch(x, top, end - x, BAND_HEIGHT, 5)),
        rect(x, top, end - x, BAND_HEIGHT, null, 'muted'),
      ]),
      ...names.labels.flatMap(({ text, x, row }) => {
        const baseline = names.height - row * ROW - 2;
        return [
          line(x, baseline - 5, x, top, 0.5, 'muted'),
          label(text, x + 2.5, baseline, { face: 'sansBold', size: SIZE }, metrics),
        ];
      }),
      ...below.labels.flatMap(({ text, x, row }) => {
        const baseline = bottom + (row + 1) * ROW - 1;
        return [line(x, top, x, baseline, 0.7), label(text, x + 2.5, baseline, { size: SIZE }, metrics)];
      }),
    ],
  };
}

const SIZE = 7.5;

function labelWidth(text: string, face: Face, metrics: FontMetrics): number {
  return metrics.width(text, face, SIZE, true) + 2.5;
}

/**
 * A row for each label, counted away from the band. Labels hang to the right of their instants and are given rows from
 * the right, so that no line from a label to the band crosses another label.
 */
function stack(
  labels: readonly { readonly text: string; readonly x: number }[],
  face: Face,
  metrics: FontMetrics,
): { labels: { text: string; x: number; row: number }[]; height: number } {
  const starts: number[] = [];
  const placed = labels.toReversed().map(({ text, x }) => {
    const end = x + labelWidth(text, face, metrics) + GAP;
    const free = starts.findIndex((start) => end <= start);
    const row = free < 0 ? starts.length : free;
    // Rows nearer the band are closed up to here: this label's line runs through them.
    for (let i = 0; i <= row; i++) starts[i] = x;
    return { text, x, row };
  });
  return { labels: placed.toReversed(), height: starts.length * ROW };
}
