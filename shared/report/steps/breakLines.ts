import type { FontMetrics } from '../metrics.ts';
import type { Face, Mark } from '../page.ts';
import type { Run, Runs } from '../runs.ts';
import { faceOf, type TypeStyle } from '../sheet.ts';

export type TextMark = Extract<Mark, { mark: 'text' }>;

/** Marks from x = 0 on the baseline y = 0. */
export interface Line {
  readonly marks: readonly TextMark[];
  readonly width: number;
}

interface Piece {
  readonly run: Run;
  readonly text: string;
  readonly face: Face;
  readonly size: number;
  readonly actual: string | null;
  readonly isTabular: boolean;
  /** Advance, and what of it counts when it stands at the end of a line. */
  readonly width: number;
  readonly inkWidth: number;
}

/**
 * Runs set into lines no wider than `width`, ragged right. A line may end after a space, a hyphen, a dash or a slash;
 * a word longer than the line is broken where it must be, so that nothing is ever cut off. A line feed starts a new line.
 * No-break spaces hold and are then written as plain spaces, so that copied text is plain.
 */
export function breakLines(runs: Runs, style: TypeStyle, width: number, metrics: FontMetrics): Line[] {
  const lines: Line[] = [];
  let line: Piece[] = [];
  let used = 0;
  const close = () => {
    lines.push(closeLine(line, style));
    line = [];
    used = 0;
  };
  /** Words measured one by one miss what kerning adds where they meet, so a line near its end is measured whole. */
  const isTooLong = (part: readonly Piece[]) => {
    const sum = used + inkWidthOf(part);
    if (sum <= width - style.size) return false;
    return sum > width || edgeOf(closeLine([...line, ...part], style), metrics) > width;
  };
  for (const paragraph of splitAtLineFeeds(runs)) {
    for (const word of wordsOf(paragraph, style, metrics)) {
      const parts = inkWidthOf(word) <= width ? [word] : shatter(word, style, metrics);
      for (const part of parts) {
        if (line.length > 0 && isTooLong(part)) close();
        line.push(...part);
        used += part.reduce((sum, piece) => sum + piece.width, 0);
      }
    }
    close();
  }
  return lines;
}

/** Width of runs set on one line. */
export function widthOf(runs: Runs, style: TypeStyle, metrics: FontMetrics): number {
  return Math.max(...breakLines(runs, style, Number.POSITIVE_INFINITY, metrics).map((line) => line.width));
}

/** Width of the widest word: no column may be narrower without breaking words. */
export function widestWord(runs: Runs, style: TypeStyle, metrics: FontMetrics): number {
  return Math.max(0, ...splitAtLineFeeds(runs).flatMap((part) => wordsOf(part, style, metrics).map(inkWidthOf)));
}

function splitAtLineFeeds(runs: Runs): Run[][] {
  const paragraphs: Run[][] = [[]];
  for (const run of runs) {
    tidy(run.text)
      .split('\n')
      .forEach((text, i) => {
        if (i > 0) paragraphs.push([]);
        if (text !== '') paragraphs.at(-1)?.push({ ...run, text });
      });
  }
  return paragraphs;
}

/** Unicode in composed form, lone surrogates and control characters gone, tabs as spaces. */
function tidy(text: string): string {
  return text
    .toWellFormed()
    .normalize('NFC')
    .replace(/\r\n?|[\u2028\u2029]/g, '\n')
    .replace(/\t/g, ' ')
    .replace(/[\p{Cc}\p{Cf}]/gu, (c) => (c === '\n' ? c : ''));
}

/** Pieces grouped into what may not be parted: a word is several pieces where its setting changes inside. */
function wordsOf(runs: readonly Run[], style: TypeStyle, metrics: FontMetrics): Piece[][] {
  const words: Piece[][] = [];
  let word: Piece[] = [];
  for (const run of runs) {
    for (const text of run.text.match(/[^ ]*?[\p{L}\p{N}][-–—/](?=\p{L})|[^ ]* +|[^ ]+/gu) ?? []) {
      word.push(...piecesOf(text, run, style, metrics));
      if (/[ \-–—/]$/.test(text)) {
        words.push(word);
        word = [];
      }
    }
  }
  if (word.length > 0) words.push(word);
  return words;
}

/** One stretch in the face of its run; what that face cannot show is set in the text face, or as a box that keeps its meaning. */
function piecesOf(text: string, run: Run, style: TypeStyle, metrics: FontMetrics): Piece[] {
  const emphasis = run.emphasis ?? (style.isBold ? 'bold' : null);
  const face = faceOf(style.family, emphasis);
  const size = style.size * (run.scale ?? 1);
  const isTabular = run.isTabular ?? style.isTabular ?? false;
  const shows = (stretch: string, by: Face) =>
    Array.from(stretch).every((c) => metrics.covers(c.codePointAt(0) ?? 0, by));
  const make = (set: string, by: Face, actual: string | null): Piece => {
    const written = set.replaceAll(/[\u00a0\u202f]/g, ' ');
    const width = metrics.width(written, by, size, isTabular);
    const inkWidth = written.endsWith(' ') ? metrics.width(written.trimEnd(), by, size, isTabular) : width;
    return { run, text: written, face: by, size, actual, isTabular, width, inkWidth };
  };
  if (shows(text, face)) return [make(text, face, null)];
  const stretches = text.match(/ +|[^ ]+/g) ?? [];
  return stretches.map((stretch) => {
    if (shows(stretch, face)) return make(stretch, face, null);
    if (shows(stretch, 'sans')) return make(stretch, 'sans', null);
    return make(
      graphemes(stretch)
        .map(() => MISSING)
        .join(''),
      'sans',
      stretch,
    );
  });
}

/** Stands for a letter that none of the faces has; what is meant travels beside it. */
const MISSING = '□';

/** Characters with the combining marks that belong to them. */
function graphemes(text: string): string[] {
  return text.match(/\P{M}\p{M}*|\p{M}+/gu) ?? [];
}

function shatter(word: readonly Piece[], style: TypeStyle, metrics: FontMetrics): Piece[][] {
  return word.flatMap((piece) =>
    graphemes(piece.actual ?? piece.text).map((text) => piecesOf(text, piece.run, style, metrics)),
  );
}

function inkWidthOf(word: readonly Piece[]): number {
  return word.reduce((sum, piece, i) => sum + (i === word.length - 1 ? piece.inkWidth : piece.width), 0);
}

/** Where the ink of a line ends as it will be drawn. */
function edgeOf({ marks }: Line, metrics: FontMetrics): number {
  return Math.max(
    ...marks.map(({ x, text, face, size, tabular = false }) => x + metrics.width(text.trimEnd(), face, size, tabular)),
  );
}

function closeLine(pieces: readonly Piece[], style: TypeStyle): Line {
  const marks: TextMark[] = [];
  let x = 0;
  let last: Piece | null = null;
  for (const piece of pieces) {
    const previous = marks.at(-1);
    if (
      previous !== undefined &&
      last?.run === piece.run &&
      last.face === piece.face &&
      last.actual === null &&
      piece.actual === null
    ) {
      marks[marks.length - 1] = { ...previous, text: previous.text + piece.text, width: previous.width + piece.width };
    } else {
      marks.push({
        mark: 'text',
        x,
        baseline: -(piece.run.rise ?? 0) * style.size,
        text: piece.text,
        face: piece.face,
        size: piece.size,
        ink: piece.run.ink ?? style.ink,
        width: piece.width,
        ...(piece.isTabular ? { tabular: true } : {}),
        ...(piece.actual === null ? {} : { actual: piece.actual }),
        ...(piece.run.goTo === undefined ? {} : { goTo: piece.run.goTo }),
      });
    }
    x += piece.width;
    last = piece;
  }
  return { marks, width: x - (last === null ? 0 : last.width - last.inkWidth) };
}
