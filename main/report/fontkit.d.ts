/** The little of fontkit that is used here; the package has no types of its own. */
declare module 'fontkit' {
  export interface Font {
    readonly unitsPerEm: number;
    readonly ascent: number;
    /** Negative, as in the font file. */
    readonly descent: number;
    layout(text: string, features?: readonly string[]): { readonly advanceWidth: number };
    hasGlyphForCodePoint(codePoint: number): boolean;
  }
  export function openSync(path: string): Font;
}
