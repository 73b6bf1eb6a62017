import bidiFactory, { type Bidi } from 'bidi-js';
import { graphemes } from './graphemes.ts';

/** The package's types speak of its module form; what is imported is its one function either way. */
const bidi = (bidiFactory as unknown as () => Bidi)();

/** Any letter or sign of a script written from right to left: Hebrew, Arabic and their neighbours. */
const RIGHT_TO_LEFT = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc\u{10800}-\u{10fff}\u{1e800}-\u{1efff}]/u;
const ISOLATES = /[\u2066-\u2069]/g;

export function isRightToLeft(text: string): boolean {
  return RIGHT_TO_LEFT.test(text);
}

/**
 * A text put among others so that its direction changes nothing of theirs: two names in a list keep their order.
 * First strong isolate, UAX #9, 2.4.
 */
export function isolated(text: string): string {
  return isRightToLeft(text) ? `\u2068${text}\u2069` : text;
}

export function withoutIsolates(text: string): string {
  return text.replace(ISOLATES, '');
}

/**
 * How deep each code unit of a paragraph lies in text of the other direction (Unicode Bidirectional Algorithm, UAX #9): even
 * from left to right, odd from right to left. A paragraph goes from left to right unless no Latin letter is in it.
 * @returns of the text without its isolates; null where all of it goes from left to right
 */
export function levelsOf(text: string): Uint8Array | null {
  if (!isRightToLeft(text)) return null;
  const { levels } = bidi.getEmbeddingLevels(text, /\p{Script=Latin}/u.test(text) ? 'ltr' : 'rtl');
  return levels.filter((_, i) => !/[\u2066-\u2069]/.test(text.charAt(i)));
}

/** The order in which stretches of these levels stand on a line, from the left (UAX #9, L2). */
export function visualOrder(levels: readonly number[]): number[] {
  const order = levels.map((_, i) => i);
  for (let level = Math.max(0, ...levels); level > 0; level -= 1) {
    for (let from = 0; from < order.length; from += 1) {
      let to = from;
      while (to < order.length && (levels[order[to] as number] as number) >= level) to += 1;
      order.splice(from, to - from, ...order.slice(from, to).toReversed());
      from = Math.max(from, to);
    }
  }
  return order;
}

/** What a typeface that only goes from left to right has to draw to show this from right to left (UAX #9, L3 and L4). */
export function turned(text: string): string {
  return graphemes(text)
    .toReversed()
    .map((sign) => bidi.getMirroredCharacter(sign) ?? sign)
    .join('');
}
