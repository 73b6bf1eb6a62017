import { lineMarks } from '../blocks/paragraph.ts';
import { label } from '../figures/drawing.ts';
import type { FontMetrics } from '../metrics.ts';
import type { Mark } from '../page.ts';
import { element, shiftMark } from '../placed.ts';
import { plain, strong, type Runs } from '../runs.ts';
import { type Sheet, STYLES } from '../sheet.ts';
import { breakLines } from '../steps/breakLines.ts';
import type { Furniture } from '../steps/place.ts';
import { CAUTION_LINE } from '../words.ts';

const style = STYLES.running;

/** Running header with case number and page, running footer with the caution. For the eye only: artifacts. */
export function runningFurniture(sheet: Sheet, running: string, isDraft: boolean): Furniture {
  return (page, of, metrics) => {
    const { left, room } = sheet;
    const top = sheet.top - 36;
    const bottom = sheet.top + room.height + 18;
    const count = plain(`Page ${page} of ${of}`);
    const header = [
      ...oneLine(plain(running), left, top, room.width - 90, metrics),
      ...oneLine(count, left + room.width - lineWidth(count, metrics), top, room.width, metrics),
      rule(left, top + style.leading + 4, room.width),
    ];
    const footer = [
      rule(left, bottom - 5, room.width),
      ...oneLine(strong(CAUTION_LINE), left, bottom, room.width, metrics),
    ];
    return [
      ...(isDraft ? [element('Artifact', `draft-${page}`, [watermark(sheet, metrics)])] : []),
      element('Artifact', `header-${page}`, header),
      element('Artifact', `footer-${page}`, footer),
    ];
  };
}

/** The word across the page, pale: text on it stays readable. */
function watermark({ width, height }: Sheet, metrics: FontMetrics): Mark {
  return label(
    'DRAFT',
    width / 2,
    height / 2 + 40,
    { size: 150, face: 'sansBold', ink: 'tint', align: 'middle' },
    metrics,
  );
}

function rule(x: number, y: number, width: number): Mark {
  return { mark: 'line', x1: x, y1: y, x2: x + width, y2: y, weight: 0.4, ink: 'rule' };
}

/** The first line of a text; more than a line ends in an ellipsis, since the same text stands in full on the first page. */
function oneLine(runs: Runs, x: number, y: number, width: number, metrics: FontMetrics): Mark[] {
  const lines = breakLines(runs, style, width - lineWidth(plain('…'), metrics), metrics);
  const [line] = lines;
  if (line === undefined) return [];
  const marks = lineMarks(line, style, metrics).map((mark) => shiftMark(mark, x, y));
  if (lines.length === 1) return marks;
  const more = breakLines(plain('…'), style, width, metrics)[0];
  const dots = more === undefined ? [] : lineMarks(more, style, metrics);
  return [...marks, ...dots.map((mark) => shiftMark(mark, x + line.width, y))];
}

function lineWidth(runs: Runs, metrics: FontMetrics): number {
  return breakLines(runs, style, Number.POSITIVE_INFINITY, metrics)[0]?.width ?? 0;
}
