import type { FontMetrics } from '../metrics.ts';
import type { Mark } from '../page.ts';
import { element } from '../placed.ts';
import { STYLES } from '../sheet.ts';
import { breakLines } from '../steps/breakLines.ts';
import { plain } from '../runs.ts';
import { type Setting, type Strip, strip } from './block.ts';
import { textStrips } from './paragraph.ts';

/** A drawing of so many points' height over any width. Its alternative text says what is to be seen. */
export interface Figure {
  readonly block: 'figure';
  readonly alt: string;
  readonly caption: string | null;
  readonly height: number;
  readonly draw: (width: number, metrics: FontMetrics) => readonly Mark[];
}

export function figure(what: Omit<Figure, 'block'>): Figure {
  return { block: 'figure', ...what };
}

export function layFigure(block: Figure, { width, metrics, id }: Setting): Strip[] {
  const drawing = strip(block.height, [element('Figure', id, block.draw(width, metrics), [], { alt: block.alt })], {
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
