/** The little of fontkit that is used here; the package has no types of its own. */
declare module 'fontkit' {
  export interface Font {
    readonly unitsPerEm: number;
    readonly ascent: number;
    /** Negative, as in the font file. */
    readonly descent: number;
    layout(
      text: string,
      features?: readonly string[],
      script?: string,
      language?: string,
      direction?: 'ltr' | 'rtl',
    ): GlyphRun;
    /** By id, with the letters each was first asked for. Of fontkit's own; see `fontForDocument`. */
    _glyphs: object;
    hasGlyphForCodePoint(codePoint: number): boolean;
  }
  export interface GlyphRun {
    readonly advanceWidth: number;
    readonly positions: readonly { readonly xAdvance: number; readonly xOffset: number; readonly yOffset: number }[];
    readonly glyphs: readonly {
      readonly name: string;
      readonly path: { readonly commands: readonly { readonly command: string; readonly args: readonly number[] }[] };
    }[];
  }
  export function openSync(path: string): Font;
}
