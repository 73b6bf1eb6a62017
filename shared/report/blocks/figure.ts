import type { FontMetrics } from '../metrics.ts';
import type { Mark } from '../page.ts';
import { element } from '../placed.ts';
import { STYLES } from '../sheet.ts';
import { breakLines } from '../steps/breakLines.ts';
import { plain } from '../runs.ts';
import { type Setting, type Strip, strip } from './block.ts';
import { textStrips } from './paragraph.ts';

/** Marks from the top left corner, and how far down they reach. */
export interface Drawing {
  readonly height: number;
  readonly marks: readonly Mark[];
}

/** A drawing for any width. Its alternative text says what is to be seen. */
export interface Figure {
  readonly block: 'figure';
  readonly alt: string;
  readonly caption: string | null;
  readonly draw: (width: number, metrics: FontMetrics) => Drawing;
}

export function figure(what: Omit<Figure, 'block'>): Figure {
  return { block: 'figure', ...what };
}

export function layFigure(block: Figure, { width, metrics, id }: Setting): Strip[] {
  const { height, marks } = block.draw(width, metrics);
  const drawing = strip(height, [element('Figure', id, marks, [], { alt: block.alt })], {
    gap: 7,
    keepWithNext: block.caption !== null,
  });
  if (block.caption === null) return [drawing];
  const style = STYLES.quiet;
  const caption = textStrips(
    breakLines(plain(block.caption), style, width, metrics),
    style,
    'P',
    `${id}.caption`,
    metrics,
  );
  return [
    drawing,
    ...caption.map((one, i) => ({ ...one, gap: i === 0 ? 3 : 0, keepWithNext: i < caption.length - 1 })),
  ];
}
