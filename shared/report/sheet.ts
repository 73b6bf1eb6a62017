import type { Face, Ink } from './page.ts';

/** Measures of the page and its type, in points. Layout is two columns: a narrow one for labels, a wide one for text. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly top: number;
  /** Width and height left for the content. */
  readonly room: { readonly width: number; readonly height: number };
}

/** ISO 216 A4, and ANSI A (8.5 by 11 in). */
const PAPER = { a4: { width: 595.28, height: 841.89 }, letter: { width: 612, height: 792 } } as const;
export type Paper = keyof typeof PAPER;

const MARGIN = { side: 58, top: 74, bottom: 82 };

export function sheetFor(paper: Paper): Sheet {
  const { width, height } = PAPER[paper];
  return {
    width,
    height,
    left: MARGIN.side,
    top: MARGIN.top,
    room: { width: width - 2 * MARGIN.side, height: height - MARGIN.top - MARGIN.bottom },
  };
}

/** The label column and the space between it and the text. */
export const LABEL_WIDTH = 92;
export const GUTTER = 16;

export type Family = 'sans' | 'serif';

export interface TypeStyle {
  readonly family: Family;
  readonly isBold: boolean;
  readonly size: number;
  readonly leading: number;
  readonly ink: Ink;
  readonly isTabular?: boolean;
}

export const STYLES = {
  title: { family: 'serif', isBold: true, size: 23, leading: 28, ink: 'ink' },
  section: { family: 'serif', isBold: true, size: 14.5, leading: 19, ink: 'ink' },
  subsection: { family: 'sans', isBold: true, size: 11, leading: 15, ink: 'accent' },
  lead: { family: 'serif', isBold: false, size: 11.5, leading: 16.5, ink: 'ink' },
  body: { family: 'sans', isBold: false, size: 10, leading: 14, ink: 'ink' },
  small: { family: 'sans', isBold: false, size: 9, leading: 12, ink: 'ink' },
  label: { family: 'sans', isBold: true, size: 9, leading: 14, ink: 'ink' },
  quiet: { family: 'sans', isBold: false, size: 8.5, leading: 12, ink: 'muted' },
  cell: { family: 'sans', isBold: false, size: 9, leading: 12, ink: 'ink', isTabular: true },
  head: { family: 'sans', isBold: true, size: 8.5, leading: 12, ink: 'ink' },
  running: { family: 'sans', isBold: false, size: 8, leading: 10.5, ink: 'muted' },
} as const satisfies Record<string, TypeStyle>;

/** The typefaces of other scripts, for what those of the text do not show. */
export function scriptFaces(emphasis: 'bold' | 'italic' | null): readonly Face[] {
  return emphasis === 'bold' ? ['hebrewBold', 'arabicBold'] : ['hebrew', 'arabic'];
}

export function faceOf(family: Family, emphasis: 'bold' | 'italic' | null): Face {
  if (family === 'serif') return emphasis === 'bold' ? 'serifBold' : 'serif';
  return emphasis === 'bold' ? 'sansBold' : emphasis === 'italic' ? 'sansItalic' : 'sans';
}
