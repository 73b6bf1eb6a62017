import type { FontMetrics } from '../metrics.ts';
import type { Mark, Placed } from '../page.ts';
import { element, mergeSame, shiftMark, shiftPlaced } from '../placed.ts';
import { plain, type Runs, textOf } from '../runs.ts';
import { STYLES, type TypeStyle } from '../sheet.ts';
import { breakLines, type Line, widestWord, widthOf } from '../steps/breakLines.ts';
import { keepTogether, type Setting, type Strip, strip } from './block.ts';
import { lineMarks } from './paragraph.ts';

export interface Column {
  readonly head: string;
  readonly align: 'left' | 'right';
}

/** A table with a head that returns on every page. The first cell of a row names the row. */
export interface Table {
  readonly block: 'table';
  readonly caption: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Runs[])[];
}

export function table(
  caption: string,
  columns: readonly (string | Column)[],
  rows: readonly (readonly (string | Runs)[])[],
): Table {
  return {
    block: 'table',
    caption,
    columns: columns.map((column) => (typeof column === 'string' ? { head: column, align: 'left' } : column)),
    rows: rows.map((row) => row.map((cell) => (typeof cell === 'string' ? plain(cell) : cell))),
  };
}

export const right = (head: string): Column => ({ head, align: 'right' });

/** Space between columns; the outer edges are flush with the text. */
export const COLUMN_GAP = 14;
const ROW_PAD = 2.5;
/** Rows up to this height stay on one page; taller ones may part between lines. */
const KEEP_ROW_UP_TO = 160;

export function layTable(block: Table, { width, metrics, id }: Setting): Strip[] {
  const widths = columnWidths(block, width, metrics);
  const caption = STYLES.quiet;
  const captionStrips = breakLines(plain(block.caption), caption, width, metrics).map((line, i) =>
    strip(
      caption.leading,
      [element('Table', id, [], [element('Caption', `${id}.caption`, lineMarks(line, caption, metrics))])],
      {
        gap: i === 0 ? 10 : 0,
        keepWithNext: true,
      },
    ),
  );
  const heads = block.columns.map((column) => plain(column.head));
  const headStrips = rowStrips(heads, block, widths, STYLES.head, `${id}.head`, metrics, 'head').map((one) => ({
    ...one,
    content: [element('Table', id, [], one.content)],
    keepWithNext: true,
  }));
  let top = 0;
  const headContent: Placed[] = [];
  for (const one of headStrips) {
    headContent.push(...one.content.map((placed) => shiftPlaced(placed, 0, top)));
    top += one.height;
  }
  const head = { id, height: top, content: mergeSame(headContent) };
  const body = block.rows.flatMap((row, r) => {
    const strips = rowStrips(row, block, widths, STYLES.cell, `${id}.r${r}`, metrics, 'body');
    const kept = keepTogether(strips, KEEP_ROW_UP_TO);
    // The first two rows stay with the head, the last two with each other.
    const holdsOn = block.rows.length > 1 && (r === 0 || r === block.rows.length - 2);
    return kept.map((one, i) => ({
      ...one,
      keepWithNext: one.keepWithNext || (holdsOn && i === kept.length - 1),
      content: [element('Table', id, [], one.content)],
      head,
    }));
  });
  return [...captionStrips, ...headStrips, ...body];
}

/** One row as strips, one for each line of its tallest cell, ending with a rule. */
function rowStrips(
  cells: readonly Runs[],
  { columns }: Table,
  widths: readonly number[],
  style: TypeStyle,
  id: string,
  metrics: FontMetrics,
  part: 'head' | 'body',
): Strip[] {
  const lines = cells.map((runs, c) => breakLines(runs, style, widths[c] ?? 0, metrics));
  const count = Math.max(1, ...lines.map((cell) => cell.length));
  const total = widths.reduce((sum, one) => sum + one + COLUMN_GAP, -COLUMN_GAP);
  return Array.from({ length: count }, (_, k) => {
    const padTop = k === 0 ? ROW_PAD : 0;
    const height = style.leading + padTop + (k === count - 1 ? ROW_PAD : 0);
    let x = 0;
    const row = cells.map((_cell, c) => {
      const width = widths[c] ?? 0;
      // Heads sit on the rule: their lines count from the bottom.
      const line = part === 'head' ? lines[c]?.[k - count + (lines[c]?.length ?? 0)] : lines[c]?.[k];
      const marks =
        line === undefined ? [] : alignLine(line, x, width, columns[c]?.align ?? 'left', style, metrics, padTop);
      x += width + COLUMN_GAP;
      // A row that goes on with the one above leaves its first cell empty: it heads nothing.
      const isHead = part === 'head' || (c === 0 && textOf(cells[c] ?? []) !== '');
      return element(
        isHead ? 'TH' : 'TD',
        `${id}.c${c}`,
        marks,
        [],
        isHead ? { scope: part === 'head' ? 'Column' : 'Row' } : {},
      );
    });
    const content = [element('TR', id, [], row)];
    if (k < count - 1) return strip(height, content);
    const rule: Mark = { mark: 'line', x1: 0, y1: height, x2: total, y2: height, ...RULE[part] };
    return strip(height, [...content, element('Artifact', `${id}.rule`, [rule])]);
  });
}

const RULE = { head: { weight: 0.9, ink: 'ink' }, body: { weight: 0.4, ink: 'rule' } } as const;

function alignLine(
  line: Line,
  x: number,
  width: number,
  align: Column['align'],
  style: TypeStyle,
  metrics: FontMetrics,
  dy: number,
): Mark[] {
  const left = align === 'right' ? x + width - line.width : x;
  return lineMarks(line, style, metrics).map((mark) => shiftMark(mark, left, dy));
}

/**
 * Every column as wide as its longest line where all fit, with a little air; else each keeps its widest word and the
 * rest is shared by how much its cells ask for, on average and at most, none getting more than its longest line.
 */
export function columnWidths({ columns, rows }: Table, tableWidth: number, metrics: FontMetrics): number[] {
  const width = tableWidth - COLUMN_GAP * (columns.length - 1);
  const asks = columns.map((column, c) => {
    const cells: [Runs, TypeStyle][] = rows.map((row) => [row[c] ?? [], STYLES.cell]);
    const all: [Runs, TypeStyle][] = [[plain(column.head), STYLES.head], ...cells];
    const natural = all.map(([runs, style]) => widthOf(runs, style, metrics));
    // Half a point more than measured, so that rounding never breaks a line that fits.
    const most = Math.max(...natural) + 0.5;
    const least = Math.min(
      width * 0.4,
      Math.max(...all.map(([runs, style]) => widestWord(runs, style, metrics))) + 0.5,
    );
    return { most, least, wants: Math.sqrt((most * sum(natural)) / natural.length) };
  });
  const most = sum(asks.map((ask) => ask.most));
  const least = sum(asks.map((ask) => ask.least));
  if (most <= width)
    return spaced(
      asks.map((ask) => ask.most),
      width - most,
      columns.at(-1)?.align === 'left',
    );
  if (least > width) return asks.map((ask) => (ask.least * width) / least);
  return shared(asks, width);
}

interface Ask {
  readonly most: number;
  readonly least: number;
  readonly wants: number;
}

/** Shares the width; a column that would get more than its longest line gives the surplus back to the others. */
function shared(asks: readonly Ask[], width: number): number[] {
  const full = new Set<number>();
  for (;;) {
    const open = asks.filter((_, c) => !full.has(c));
    const spare = width - sum(asks.map((ask, c) => (full.has(c) ? ask.most : ask.least)));
    const wanted = sum(open.map((ask) => ask.wants));
    const widths = asks.map((ask, c) => (full.has(c) ? ask.most : ask.least + (spare * ask.wants) / wanted));
    const over = asks.flatMap((ask, c) => (!full.has(c) && (widths[c] ?? 0) > ask.most ? [c] : []));
    if (over.length === 0 || over.length === open.length) return widths;
    for (const c of over) full.add(c);
  }
}

/** Some air for every column; what is left goes to a last column of words, and a last column of numbers stays near. */
function spaced(widths: readonly number[], spare: number, endsInWords: boolean): number[] {
  const air = Math.min(spare / widths.length, AIR);
  const left = spare - air * widths.length;
  return widths.map((one, c) => one + air + (c === widths.length - 1 && endsInWords ? left : 0));
}

const AIR = 26;

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
