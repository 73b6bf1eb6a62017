import { type FontMetrics, shows } from '../metrics.ts';
import type { Face, Mark } from '../page.ts';
import type { Run, Runs } from '../runs.ts';
import { faceOf, scriptFaces, type TypeStyle } from '../sheet.ts';
import { isRightToLeft, levelsOf, visualOrder, withoutIsolates } from './bidi.ts';
import { graphemes } from './graphemes.ts';
import { MISSING, plainSpaces } from './setLabel.ts';

export type TextMark = Extract<Mark, { mark: 'text' }>;

/** Marks from x = 0 on the baseline y = 0. */
export interface Line {
  readonly marks: readonly TextMark[];
  readonly width: number;
}

interface Piece {
  readonly run: Run;
  readonly text: string;
  /** How deep it lies in text of the other direction; odd: from right to left. */
  readonly level: number;
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
 * No-break spaces hold and are then written as plain spaces, so that copied text is plain. Text from right to left is broken
 * in reading order and put in its places line by line; marks stay in reading order.
 */
export function breakLines(runs: Runs, style: TypeStyle, width: number, metrics: FontMetrics): Line[] {
  const lines: Line[] = [];
  let line: Piece[] = [];
  let used = 0;
  const close = () => {
    lines.push(closeLine(line, style, metrics));
    line = [];
    used = 0;
  };
  /** Words measured one by one miss what kerning adds where they meet, so a line near its end is measured whole. */
  const isTooLong = (part: readonly Piece[]) => {
    const sum = used + inkWidthOf(part);
    if (sum <= width - style.size) return false;
    return sum > width || edgeOf(closeLine([...line, ...part], style, metrics), metrics) > width;
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

/** Unicode in composed form, lone surrogates and control characters gone but those that keep a direction or two Persian letters apart, tabs as spaces. */
function tidy(text: string): string {
  return text
    .toWellFormed()
    .normalize('NFC')
    .replace(/\r\n?|[\u2028\u2029]/g, '\n')
    .replace(/\t/g, ' ')
    .replace(/(?<!\p{Script=Arabic})\u200c|(?!\u200c)[\p{Cc}\p{Cf}]/gu, (c) => (/[\n\u2066-\u2069]/.test(c) ? c : ''));
}

/** Pieces grouped into what may not be parted: a word is several pieces where its setting or its direction changes inside. */
function wordsOf(runs: readonly Run[], style: TypeStyle, metrics: FontMetrics): Piece[][] {
  const levels = levelsOf(runs.map((run) => run.text).join(''));
  const words: Piece[][] = [];
  let word: Piece[] = [];
  let at = 0;
  for (const run of runs) {
    const whole = withoutIsolates(run.text);
    for (const text of whole.match(/[^ ]*?[\p{L}\p{N}][-–—/](?=\p{L})|[^ ]* +|[^ ]+/gu) ?? []) {
      const own = levels?.slice(at, at + text.length) ?? null;
      word.push(...ofOneLevel(text, own).flatMap(([part, level]) => piecesOf(part, level, run, style, metrics)));
      at += text.length;
      if (/[ \-–—/]$/.test(text)) {
        words.push(word);
        word = [];
      }
    }
  }
  if (word.length > 0) words.push(word);
  return words;
}

/** A text parted where its level changes. */
function ofOneLevel(text: string, levels: Uint8Array | null): [string, number][] {
  if (levels === null) return [[text, 0]];
  const parts: [string, number][] = [];
  for (let i = 0; i < text.length; i += 1) {
    const [level, last] = [levels[i] ?? 0, parts.at(-1)];
    if (last?.[1] === level) last[0] += text.charAt(i);
    else parts.push([text.charAt(i), level]);
  }
  return parts;
}

/**
 * One stretch in the face of its run; what that face cannot show is set in the text face, letter by letter in that of its
 * script, or as boxes that keep their meaning.
 */
function piecesOf(text: string, level: number, run: Run, style: TypeStyle, metrics: FontMetrics): Piece[] {
  const emphasis = run.emphasis ?? (style.isBold ? 'bold' : null);
  const face = faceOf(style.family, emphasis);
  const size = style.size * (run.scale ?? 1);
  const isTabular = run.isTabular ?? style.isTabular ?? false;
  const make = (set: string, by: Face, actual: string | null): Piece => {
    const written = plainSpaces(set);
    const width = metrics.width(written, by, size, isTabular);
    const inkWidth = written.endsWith(' ') ? metrics.width(written.trimEnd(), by, size, isTabular) : width;
    return { run, text: written, level, face: by, size, actual, isTabular, width, inkWidth };
  };
  if (shows(metrics, text, face)) return [make(text, face, null)];
  const textFaces = [face, 'sans' as const];
  const faces = [...textFaces, ...scriptFaces(emphasis)];
  const stretches = text.match(/ +|[^ ]+/g) ?? [];
  return stretches.flatMap((stretch) => {
    const whole = textFaces.find((one) => shows(metrics, stretch, one));
    if (whole !== undefined) return [make(stretch, whole, null)];
    const letters = graphemes(stretch).map((letter) => ({
      letter,
      by: faces.find((one) => shows(metrics, letter, one)) ?? null,
    }));
    return grouped(letters).map(({ set, by }) =>
      by === null ? make(MISSING.repeat(graphemes(set).length), 'sans', set) : make(set, by, null),
    );
  });
}

/** Neighbouring letters of one face as one text. */
function grouped(letters: readonly { letter: string; by: Face | null }[]): { set: string; by: Face | null }[] {
  const groups: { set: string; by: Face | null }[] = [];
  for (const { letter, by } of letters) {
    const last = groups.at(-1);
    if (last?.by === by) last.set += letter;
    else groups.push({ set: letter, by });
  }
  return groups;
}

function shatter(word: readonly Piece[], style: TypeStyle, metrics: FontMetrics): Piece[][] {
  return word.flatMap((piece) =>
    graphemes(piece.actual ?? piece.text).map((text) => piecesOf(text, piece.level, piece.run, style, metrics)),
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

function closeLine(pieces: readonly Piece[], style: TypeStyle, metrics: FontMetrics): Line {
  const marks: TextMark[] = [];
  const levels: number[] = [];
  let last: Piece | null = null;
  let width = 0;
  for (const piece of hanging(pieces)) {
    const previous = marks.at(-1);
    if (
      previous !== undefined &&
      last?.run === piece.run &&
      last.face === piece.face &&
      last.level === piece.level &&
      last.actual === null &&
      piece.actual === null
    ) {
      const text = previous.text + piece.text;
      // Letters of some scripts change where they join.
      const joined = isRightToLeft(text)
        ? metrics.width(text, piece.face, piece.size, piece.isTabular)
        : previous.width + piece.width;
      width += joined - previous.width;
      marks[marks.length - 1] = { ...previous, text, width: joined };
    } else {
      marks.push({
        mark: 'text',
        x: width,
        baseline: -(piece.run.rise ?? 0) * style.size,
        text: piece.text,
        face: piece.face,
        size: piece.size,
        ink: piece.run.ink ?? style.ink,
        width: piece.width,
        ...(piece.isTabular ? { tabular: true } : {}),
        ...(piece.level % 2 === 0 ? {} : { rightToLeft: true }),
        ...(piece.actual === null ? {} : { actual: piece.actual }),
        ...(piece.run.goTo === undefined ? {} : { goTo: piece.run.goTo }),
      });
      levels.push(piece.level);
      width += piece.width;
    }
    last = piece;
  }
  const inkWidth = width - (last === null ? 0 : last.width - last.inkWidth);
  return { marks: levels.some((level) => level > 0) ? inTheirPlaces(marks, levels) : marks, width: inkWidth };
}

/** Spaces that end a line hang over its right end, whatever the direction of what is before them (UAX #9, L1). */
function hanging(pieces: readonly Piece[]): readonly Piece[] {
  const last = pieces.at(-1);
  if (last === undefined || last.level === 0 || last.text.trim() !== '') return pieces;
  return [...pieces.slice(0, -1), { ...last, level: 0 }];
}

/** Marks in reading order, each where it stands on the line. */
function inTheirPlaces(marks: readonly TextMark[], levels: readonly number[]): TextMark[] {
  const placed = [...marks];
  let x = 0;
  for (const i of visualOrder(levels)) {
    const mark = marks[i] as TextMark;
    placed[i] = { ...mark, x };
    x += mark.width;
  }
  return placed;
}
