/** What typed text means: a value to keep, nothing (null), or a refusal in words. */
export type Typed<T> = { readonly value: T } | { readonly refusal: string };

/** The value that a field with this text holds. Refused text holds none: better unknown than a leftover of an earlier keystroke. */
export function valueOf<T>(typed: Typed<T>): T | null {
  return 'value' in typed ? typed.value : null;
}

/**
 * A decimal number as people write it: point or comma, plain or true minus sign. No thousands marks, which would read
 * 1,800 as one number here and another there. Null for empty text.
 */
export function parseNumber(text: string): Typed<number | null> {
  const plain = text.trim().replace('\u2212', '-').replace(',', '.');
  if (plain === '') return { value: null };
  if (!/^[+-]?(\d+(\.\d*)?|\.\d+)$/.test(plain)) {
    return { refusal: 'this is not a number. Use digits and one decimal point or comma.' };
  }
  return { value: Number(plain) };
}

/** True while text may still become a number, so that a lone minus sign is not scolded. */
export function mayBecomeNumber(text: string): boolean {
  return /^\s*[+\-\u2212]?\d*[.,]?\d*\s*$/.test(text);
}

const MONTHS = 'january february march april may june july august september october november december'.split(' ');
const HOW = 'write it year first, 2026-11-25, or with the month as a word, 25 Nov 2026';

/**
 * A date as precisely as it is given: `2026`, `2026-11`, `25 Nov 2026`. Never 03/04/2026, which is March here and April
 * there. Null for empty text.
 */
export function parseRoughDate(text: string): Typed<string | null> {
  const plain = text.trim().toLowerCase();
  if (plain === '') return { value: null };
  const digits = /^(\d{4})(?:[-/. ](\d{1,2})(?:[-/. ](\d{1,2}))?)?$/.exec(plain);
  const words = /^(?:(\d{1,2})\.?\s+)?(\p{L}{3,})\.?,?\s+(\d{4})$/u.exec(plain);
  const named = words === null ? 0 : MONTHS.findIndex((name) => name.startsWith(words[2] ?? '')) + 1;
  if (words !== null && named === 0) return { refusal: `“${words[2]}” is not the name of a month.` };
  const parts = digits !== null ? digits.slice(1) : words !== null ? [words[3], String(named), words[1]] : null;
  if (parts === null) return { refusal: `${HOW}.` };
  const [year = '', month, day] = parts;
  if (Number(year) < 1900 || Number(year) > 2999) return { refusal: 'the year must be 1900 or later.' };
  if (month !== undefined && (Number(month) < 1 || Number(month) > 12))
    return { refusal: `there is no month ${month}.` };
  if (day !== undefined && !isDayOfMonth(Number(year), Number(month), Number(day))) {
    return { refusal: `there is no day ${day} in that month.` };
  }
  const date = [year, month, day].filter((part) => part !== undefined).map((part) => part.padStart(2, '0'));
  return { value: date.join('-') };
}

/** A whole day. */
export function parseDay(text: string): Typed<string | null> {
  const typed = parseRoughDate(text);
  if ('refusal' in typed || typed.value === null || typed.value.length === 10) return typed;
  return { refusal: `the day is needed too: ${HOW}.` };
}

function isDayOfMonth(year: number, month: number, day: number): boolean {
  const date = new Date(Date.UTC(year, month - 1, day));
  return date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
}
