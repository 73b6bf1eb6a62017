/** What typed text means: a value to keep, nothing, or a refusal in words. */
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

/** A year, a month or a day, as precisely as it is remembered. */
export function parseRoughDate(text: string): Typed<string | null> {
  const plain = text.trim().replaceAll(/[/.]/g, '-');
  if (plain === '') return { value: null };
  const parts = /^(\d{4})(?:-(\d{1,2}))?(?:-(\d{1,2}))?$/.exec(plain);
  if (parts === null) return { refusal: 'write a year (2024), a month (2024-03) or a day (2024-03-09).' };
  const [, year = '', month, day] = parts;
  const date = [year, month, day].filter((part) => part !== undefined).map((part) => part.padStart(2, '0'));
  if (month !== undefined && (Number(month) < 1 || Number(month) > 12))
    return { refusal: `there is no month ${month}.` };
  if (day !== undefined && !isDayOfMonth(Number(year), Number(month), Number(day))) {
    return { refusal: `there is no day ${day} in that month.` };
  }
  return { value: date.join('-') };
}

function isDayOfMonth(year: number, month: number, day: number): boolean {
  const date = new Date(Date.UTC(year, month - 1, day));
  return date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
}
