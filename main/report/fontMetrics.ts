import type { FontMetrics } from '../../shared/report/metrics.ts';
import type { Face } from '../../shared/report/page.ts';
import { layOut, openFont } from './openFonts.ts';

/**
 * Metrics of the typefaces that reports are set in, read from the files that the PDF embeds.
 * Widths are those of the drawing: word by word, each with the space after it; figures all of one width where asked.
 */
export function loadFontMetrics(): FontMetrics {
  loaded ??= readFonts();
  return loaded;
}

/** Kept for the life of the program, with the widths already looked up. */
let loaded: FontMetrics | null = null;

function readFonts(): FontMetrics {
  const widths = new Map<string, number>();
  const emWidth = (text: string, face: Face, features: readonly string[]): number => {
    const key = `${face}|${features.length}|${text}`;
    const known = widths.get(key);
    if (known !== undefined) return known;
    const font = openFont(face);
    const width = layOut(font, text, features).advanceWidth / font.unitsPerEm;
    widths.set(key, width);
    return width;
  };
  return {
    width(text, face, size, tabular) {
      if (tabular) return emWidth(text, face, TABULAR) * size;
      return (text.match(/[^ ]* |[^ ]+/g) ?? []).reduce((sum, word) => sum + emWidth(word, face, []), 0) * size;
    },
    ascent: (face, size) => (openFont(face).ascent / openFont(face).unitsPerEm) * size,
    descent: (face, size) => (-openFont(face).descent / openFont(face).unitsPerEm) * size,
    covers: (codePoint, face) => openFont(face).hasGlyphForCodePoint(codePoint),
  };
}

/** OpenType feature for figures of equal width. */
export const TABULAR: readonly string[] = ['tnum'];
