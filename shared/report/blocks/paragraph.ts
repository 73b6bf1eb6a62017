import type { FontMetrics } from '../metrics.ts';
import { element, shiftMark } from '../placed.ts';
import type { Mark, Role } from '../page.ts';
import { plain, type Runs } from '../runs.ts';
import { STYLES, type TypeStyle } from '../sheet.ts';
import { breakLines, type Line } from '../steps/breakLines.ts';
import { type Setting, type Strip, strip, withGap } from './block.ts';

export interface Paragraph {
  readonly block: 'paragraph';
  readonly runs: Runs;
  readonly style: 'body' | 'small' | 'lead' | 'quiet';
  readonly role: 'P' | 'Note' | 'Caption';
  readonly keepWithNext: boolean;
}

export function paragraph(
  text: string | Runs,
  more: Partial<Pick<Paragraph, 'style' | 'role' | 'keepWithNext'>> = {},
): Paragraph {
  return {
    block: 'paragraph',
    runs: typeof text === 'string' ? plain(text) : text,
    style: 'body',
    role: 'P',
    keepWithNext: false,
    ...more,
  };
}

const GAP = { body: 5, small: 3, lead: 7, quiet: 4 };

export function layParagraph(block: Paragraph, { width, metrics, id }: Setting): Strip[] {
  const style = STYLES[block.style];
  const strips = textStrips(breakLines(block.runs, style, width, metrics), style, block.role, id, metrics);
  const last = strips.length - 1;
  return withGap(
    strips.map((one, i) => (i === last ? { ...one, keepWithNext: block.keepWithNext } : one)),
    GAP[block.style],
  );
}

/** Lines as strips of one element. At least two lines stay together on either side of a page break. */
export function textStrips(
  lines: readonly Line[],
  style: TypeStyle,
  role: Role,
  id: string,
  metrics: FontMetrics,
): Strip[] {
  const last = lines.length - 1;
  return lines.map((line, i) =>
    strip(style.leading, [element(role, id, lineMarks(line, style, metrics))], {
      keepWithNext: i < last && (i === 0 || i === last - 1),
    }),
  );
}

/** Marks of a line moved to the baseline of a strip as high as the leading. */
export function lineMarks(line: Line, style: TypeStyle, metrics: FontMetrics): Mark[] {
  return line.marks.map((mark) => shiftMark(mark, 0, baselineOf(style, metrics)));
}

export function baselineOf(style: TypeStyle, metrics: FontMetrics): number {
  const face = style.family === 'serif' ? 'serif' : 'sans';
  const ascent = metrics.ascent(face, style.size);
  return (style.leading - ascent - metrics.descent(face, style.size)) / 2 + ascent;
}
