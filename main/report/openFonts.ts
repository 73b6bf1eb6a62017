import { type Font, type GlyphRun, openSync } from 'fontkit';
import type { Face } from '../../shared/report/page.ts';
import { fontFile } from './fontFiles.ts';

/** Opened once: the files never change while the program runs, and reading their tables takes as long as a page. */
const opened = new Map<Face, Font>();

export function openFont(face: Face): Font {
  const font = opened.get(face) ?? openSync(fontFile(face));
  opened.set(face, font);
  return font;
}

/** Glyphs from left to right as they stand on the page: letters of Hebrew and Arabic turned round, their figures not. */
export function layOut(font: Font, text: string, features: readonly string[] = []): GlyphRun {
  return font.layout(text, features, undefined, undefined, /\p{L}/u.test(text) ? undefined : 'ltr');
}

/**
 * The same typeface for one document, each stretch of text laid out once however often it is measured and drawn.
 * fontkit keeps with a glyph the letters it was first asked for, and some letters share one (µ and μ, hyphen and minus
 * of old keyboards): they are forgotten here, or what a document says of its letters would hang on the one before it.
 */
export function fontForDocument(face: Face): Font {
  const font = openFont(face);
  // oxlint-disable-next-line no-underscore-dangle -- fontkit's own name; the tests see that it is the right one
  font._glyphs = {};
  const runs = new Map<string, GlyphRun>();
  const layout = (text: string, features: readonly string[] = []): GlyphRun => {
    const key = `${features.join()}|${text}`;
    const run = runs.get(key) ?? layOut(font, text, features);
    runs.set(key, run);
    // pdfkit scales the positions it is given where they stand.
    const positions = run.positions.map((position) => ({ ...position }));
    return Object.assign(Object.create(Object.getPrototypeOf(run) as object) as GlyphRun, run, { positions });
  };
  return Object.assign(Object.create(font) as Font, { layout });
}
