import { type Font, type GlyphRun, openSync } from 'fontkit';
import { FACES, type Face } from '../../shared/report/page.ts';
import { fontFile } from './fontFiles.ts';

export type Fonts = Readonly<Record<Face, Font>>;

/** Opened once: the files never change while the program runs, and reading their tables takes as long as a page. */
let opened: Fonts | null = null;

export function openFonts(): Fonts {
  opened ??= Object.fromEntries(FACES.map((face) => [face, openSync(fontFile(face))])) as Record<Face, Font>;
  return opened;
}

/**
 * The same typefaces for one document, each stretch of text laid out once however often it is measured and drawn.
 * fontkit keeps with a glyph the letters it was first asked for, and some letters share one (µ and μ, hyphen and minus
 * of old keyboards): they are forgotten here, or what a document says of its letters would hang on the one before it.
 */
export function fontsForDocument(): Fonts {
  const fonts = openFonts();
  return Object.fromEntries(
    FACES.map((face) => {
      const font = fonts[face];
      // oxlint-disable-next-line no-underscore-dangle -- fontkit's own name; the tests see that it is the right one
      font._glyphs = {};
      const runs = new Map<string, GlyphRun>();
      const layout = (text: string, features: readonly string[] = []): GlyphRun => {
        const key = `${features.join()}|${text}`;
        const run = runs.get(key) ?? font.layout(text, features);
        runs.set(key, run);
        // pdfkit scales the positions it is given where they stand.
        const positions = run.positions.map((position) => ({ ...position }));
        return Object.assign(Object.create(Object.getPrototypeOf(run) as object) as GlyphRun, run, { positions });
      };
      return [face, Object.assign(Object.create(font) as Font, { layout })];
    }),
  ) as Record<Face, Font>;
}
