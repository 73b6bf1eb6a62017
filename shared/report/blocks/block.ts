import type { FontMetrics } from '../metrics.ts';
import type { Placed } from '../page.ts';
import type { Beside } from './beside.ts';
import type { Equation } from './equation.ts';
import type { Figure } from './figure.ts';
import type { Heading } from './heading.ts';
import type { List } from './list.ts';
import type { PageBreak } from './pageBreak.ts';
import type { Paragraph } from './paragraph.ts';
import type { Table } from './table.ts';

/** What a document is made of: meaning only, no place and no size. */
export type Block = Heading | Paragraph | List | Table | Beside | Figure | Equation | PageBreak;

/**
 * The smallest piece that pagination moves: a line of text, a line of a table row, a figure. Marks are placed from the
 * strip's own top left corner.
 */
export interface Strip {
  readonly height: number;
  /** Space above; dropped at the top of a page. */
  readonly gap: number;
  readonly keepWithNext: boolean;
  readonly startsPage: boolean;
  /** Head of the table this row belongs to; drawn again where the row starts a page. */
  readonly head: TableHead | null;
  readonly content: readonly Placed[];
}

export interface TableHead {
  readonly id: string;
  readonly height: number;
  readonly content: readonly Placed[];
}

/** What a block needs to be laid out: the width it has, the metrics, a name of its own, and a way to lay out what it holds. */
export interface Setting {
  readonly width: number;
  readonly metrics: FontMetrics;
  readonly id: string;
  readonly layAll: (blocks: readonly Block[], setting: Omit<Setting, 'layAll'>) => Strip[];
}

export function strip(height: number, content: readonly Placed[], more: Partial<Strip> = {}): Strip {
  return { height, gap: 0, keepWithNext: false, startsPage: false, head: null, content, ...more };
}

/** The same strips with `gap` above the first. */
export function withGap(strips: readonly Strip[], gap: number): Strip[] {
  return strips.map((one, i) => (i === 0 ? { ...one, gap } : one));
}

/** Keeps strips on one page if together they are no taller than `limit`. */
export function keepTogether(strips: readonly Strip[], limit: number): Strip[] {
  if (heightOf(strips) > limit) return [...strips];
  return strips.map((one, i) => (i < strips.length - 1 ? { ...one, keepWithNext: true } : one));
}

export function heightOf(strips: readonly Strip[]): number {
  return strips.reduce((sum, one, i) => sum + one.height + (i === 0 ? 0 : one.gap), 0);
}
