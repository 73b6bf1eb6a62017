import { DomainError } from '../../errors.ts';

/**
 * How hard what an athlete reads may be, as a US grade: 7, about age 12, for a report and for what one rule says; 8 for
 * what an injury changes, often a single sentence. Conventions of this program.
 */
export const MOST_GRADE = { report: 7, rule: 7, change: 8 } as const;

/** Groups of vowels, without a silent e at the end: the usual count by machine (common practice, no source). */
function syllables(word: string): number {
  const bare = word.toLowerCase().replace(/(?<=[aeiouy].*[^laeiouy])e$|(?<=[^td])ed$|(?<=[^aeiouyscxz])es$/, '');
  return Math.max(1, bare.match(/[aeiouy]+/g)?.length ?? 1);
}

/**
 * US school grade at which sentences read: 0.39 words per sentence + 11.8 syllables per word − 15.59. Numbers are no words.
 * @throws DomainError 'not-enough-data' if there is not one word
 * @source Kincaid, Fishburne, Rogers & Chissom 1975, Navy Research Branch Report 8-75
 */
export function readingGrade(sentences: readonly string[]): number {
  const words = sentences.flatMap((text) => text.match(/[a-z’'-]+/gi) ?? []);
  if (words.length === 0) throw new DomainError('not-enough-data', 'readingGrade needs at least one word, got none');
  const sum = words.reduce((total, word) => total + syllables(word), 0);
  return (0.39 * words.length) / sentences.length + (11.8 * sum) / words.length - 15.59;
}

/** Texts as sentences; what holds no letter is none. */
export function sentencesIn(texts: readonly string[]): string[] {
  return texts.flatMap((text) => text.split(/(?<=[.!?])\s+/)).filter((text) => /[a-z]/i.test(text));
}
