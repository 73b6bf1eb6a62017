/**
 * Full-text search as the SQLite store does it, small: letter case and accents do not count, a word typed matches words
 * that begin with it, `2026-014` means these two parts in this order.
 * @returns the first text found in, with what matched between ⟦ and ⟧; null if a word is found nowhere
 */
export function markedMatch(texts: readonly string[], words: readonly string[]): string | null {
  const found = words.map((word) => texts.map((text) => mark(text, word)).find((marked) => marked !== null));
  return found.includes(undefined) ? null : (found[0] ?? null);
}

interface Token {
  readonly folded: string;
  readonly start: number;
  readonly end: number;
}

function tokensOf(text: string): Token[] {
  return [...text.matchAll(/[\p{L}\p{N}\p{M}]+/gu)].map(({ 0: word, index }) => ({
    folded: word.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase(),
    start: index,
    end: index + word.length,
  }));
}

function mark(text: string, word: string): string | null {
  const tokens = tokensOf(text);
  const wanted = tokensOf(word);
  for (const start of tokens.keys()) {
    const run = tokens.slice(start, start + wanted.length);
    const isMatch = wanted.every(({ folded }, i) =>
      i === wanted.length - 1 ? run[i]?.folded.startsWith(folded) : run[i]?.folded === folded,
    );
    const [first] = run;
    const last = run.at(-1);
    if (isMatch && first !== undefined && last !== undefined) {
      return `${text.slice(0, first.start)}⟦${text.slice(first.start, last.end)}⟧${text.slice(last.end)}`;
    }
  }
  return null;
}
