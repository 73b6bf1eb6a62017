import { element, shiftMark } from '../placed.ts';
import { plain, type Runs } from '../runs.ts';
import { STYLES } from '../sheet.ts';
import { breakLines } from '../steps/breakLines.ts';
import { keepTogether, type Setting, type Strip, strip } from './block.ts';
import { lineMarks } from './paragraph.ts';

export interface List {
  readonly block: 'list';
  readonly items: readonly Runs[];
  readonly isNumbered: boolean;
  readonly style: 'body' | 'small' | 'quiet';
  /** Items are named `anchor-1`, `anchor-2` so that other text can lead to them; null: none does. */
  readonly anchor: string | null;
}

export function list(
  items: readonly (string | Runs)[],
  more: Partial<Pick<List, 'isNumbered' | 'style' | 'anchor'>> = {},
): List {
  return {
    block: 'list',
    items: items.map((item) => (typeof item === 'string' ? plain(item) : item)),
    isNumbered: false,
    style: 'body',
    anchor: null,
    ...more,
  };
}

/** Short lists stay on one page. */
const KEEP_UP_TO = 90;
const GAP = { body: { first: 4, next: 2 }, quiet: { first: 4, next: 2 }, small: { first: 2, next: 1 } };
const INDENT = { bullet: 11, number: 22 };

export function layList(block: List, { width, metrics, id }: Setting): Strip[] {
  const style = STYLES[block.style];
  const indent = block.isNumbered ? INDENT.number : INDENT.bullet;
  const strips = block.items.flatMap((runs, n) => {
    const label = block.isNumbered ? `${n + 1}.` : '•';
    const lines = breakLines(runs, style, width - indent, metrics);
    const last = lines.length - 1;
    return lines.map((line, i) => {
      const item = block.anchor === null ? `${id}.i${n}` : `${block.anchor}-${n + 1}`;
      const body = element(
        'LBody',
        `${item}.body`,
        lineMarks(line, style, metrics).map((mark) => shiftMark(mark, indent, 0)),
      );
      const labelLine = breakLines(plain(label), style, indent, metrics)[0];
      const parts =
        i > 0 || labelLine === undefined
          ? [body]
          : [element('Lbl', `${item}.label`, lineMarks(labelLine, style, metrics)), body];
      return strip(style.leading, [element('L', id, [], [element('LI', item, [], parts)])], {
        gap: i > 0 ? 0 : GAP[block.style][n === 0 ? 'first' : 'next'],
        keepWithNext: i < last && (i === 0 || i === last - 1),
      });
    });
  });
  return keepTogether(strips, KEEP_UP_TO);
}
