import { element, shiftMark, shiftPlaced } from '../placed.ts';
import type { Mark } from '../page.ts';
import { plain, type Runs } from '../runs.ts';
import { GUTTER, LABEL_WIDTH, STYLES } from '../sheet.ts';
import { breakLines } from '../steps/breakLines.ts';
import { type Block, heightOf, keepTogether, type Setting, type Strip, strip } from './block.ts';
import { lineMarks } from './paragraph.ts';

/** A label in the narrow column with blocks beside it. Short ones are not torn over two pages. */
export interface Beside {
  readonly block: 'beside';
  readonly label: Runs;
  readonly body: readonly Block[];
  /** Space above, points. */
  readonly gap: number;
}

export function beside(label: string | Runs, body: readonly Block[]): Beside {
  return { block: 'beside', label: typeof label === 'string' ? plain(label) : label, body, gap: GAP };
}

const GAP = 7;
const KEEP_UP_TO = 140;

export function layBeside(block: Beside, { width, metrics, id, layAll }: Setting): Strip[] {
  const style = STYLES.label;
  const indent = LABEL_WIDTH + GUTTER;
  const labels: Mark[] = breakLines(block.label, style, LABEL_WIDTH, metrics).flatMap((line, i) =>
    lineMarks(line, style, metrics).map((mark) => shiftMark(mark, 0, i * style.leading)),
  );
  const labelHeight = breakLines(block.label, style, LABEL_WIDTH, metrics).length * style.leading;
  const body = layAll(block.body, { width: width - indent, metrics, id });
  const [first = strip(style.leading, []), ...rest] = body.map((one) => ({
    ...one,
    content: one.content.map((placed) => shiftPlaced(placed, indent, 0)),
  }));
  const strips = [
    { ...first, gap: block.gap, content: [element('P', `${id}.label`, labels), ...first.content] },
    ...rest,
  ];
  return keepTogether(coverLabel(strips, labelHeight), KEEP_UP_TO);
}

/** Makes the strips beside a label at least as tall as the label, and keeps them on its page. */
function coverLabel(strips: readonly Strip[], labelHeight: number): Strip[] {
  const missing = labelHeight - heightOf(strips);
  let covered = 0;
  return strips.map((one, i) => {
    covered += one.height + (i === 0 ? 0 : one.gap);
    if (i === strips.length - 1) return missing > 0 ? { ...one, height: one.height + missing } : one;
    return covered < labelHeight ? { ...one, keepWithNext: true } : one;
  });
}
