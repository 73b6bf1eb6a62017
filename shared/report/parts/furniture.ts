import { breakLines } from '../steps/breakLines.ts';
import type { Furniture } from '../steps/place.ts';
import { lineMarks } from '../blocks/paragraph.ts';
import { element, shiftMark } from '../placed.ts';
import type { Mark } from '../page.ts';
import { dotted, plain, type Runs, strong } from '../runs.ts';
import { type Sheet, STYLES } from '../sheet.ts';
import { CAUTION_LINE } from '../words.ts';
import type { FontMetrics } from '../metrics.ts';

const style = STYLES.running;

/** Running header with case number and page, running footer with the caution. For the eye only: artifacts. */
export function runningFurniture(sheet: Sheet, caseNumber: string, kindWords: string, remark: string): Furniture {
  return (page, of, metrics) => {
    const { left, room } = sheet;
    const top = sheet.top - 36;
    const bottom = sheet.top + room.height + 18;
    const header = [
      ...at(plain(dotted(`Case ${caseNumber}`, kindWords, remark)), left, top, room.width * 0.8, 'left', metrics, 1),
      ...at(plain(`Page ${page} of ${of}`), left, top, room.width, 'right', metrics, 1),
      rule(left, top + style.leading + 4, room.width),
    ];
    const footer = [
      rule(left, bottom - 5, room.width),
      ...at(strong(CAUTION_LINE), left, bottom, room.width, 'left', metrics, 3),
    ];
    return [element('Artifact', `header-${page}`, header), element('Artifact', `footer-${page}`, footer)];
  };
}

function rule(x: number, y: number, width: number): Mark {
  return { mark: 'line', x1: x, y1: y, x2: x + width, y2: y, weight: 0.4, ink: 'rule' };
}

function at(
  runs: Runs,
  x: number,
  y: number,
  width: number,
  align: 'left' | 'right',
  metrics: FontMetrics,
  most: number,
): Mark[] {
  return breakLines(runs, style, width, metrics)
    .slice(0, most)
    .flatMap((line, i) => {
      const dx = align === 'left' ? x : x + width - line.width;
      return lineMarks(line, style, metrics).map((mark) => shiftMark(mark, dx, y + i * style.leading));
    });
}
