import type { Face } from './page.ts';

/** What layout needs to know of a typeface. Given by whoever holds the font files; pure from here on. */
export interface FontMetrics {
  /** Advance width in points of `text` set solid at `size`. */
  width(text: string, face: Face, size: number, tabular: boolean): number;
  /** Ascent and descent in points at `size`, both positive. */
  ascent(face: Face, size: number): number;
  descent(face: Face, size: number): number;
  /** Whether the face has a glyph for this code point. */
  covers(codePoint: number, face: Face): boolean;
}

/** Whether a face has all letters of a text. */
export function shows(metrics: FontMetrics, text: string, face: Face): boolean {
  return Array.from(text).every((c) => metrics.covers(c.codePointAt(0) ?? 0, face));
}
