import type { Classified } from './classified.ts';

export type Frequency = 'solitary' | 'occasional' | 'frequent';

/**
 * How often a shoulder slipped or came out, from dated events: solitary is one, occasional 2 to 5 a year, frequent more
 * than 5. Of several events the fullest twelve months count (convention: the published class names no window). Two or
 * more, never two within a year, fit no class; dates known too roughly to tell give none either.
 *
 * @param dates one an event, `2024`, `2024-03` or `2024-03-09`; null where none is known
 * @returns the class with the count it rests on, or null and why
 * @source Kuhn 2011, J Shoulder Elbow Surg 20:548 (published classes); the window is a convention
 */
export function fedsFrequency(dates: readonly (string | null)[]): Classified<Frequency> {
  if (dates.length === 0) return { is: null, because: 'no event is recorded' };
  if (dates.length === 1) return { is: 'solitary', because: 'one event' };
  const spans = dates.map(spanOf);
  const most = fullestYear(spans, ({ first, last }, from, to) => first < to && last >= from);
  const sure = fullestYear(spans, ({ first, last }, from, to) => first >= from && last < to);
  const known = classOf(sure);
  if (known !== classOf(most)) {
    return {
      is: null,
      because: `between ${sure} and ${most} events in a year: dates are missing or too rough to tell`,
    };
  }
  if (known === null) {
    return { is: null, because: `${dates.length} events, never two within a year: no class covers this` };
  }
  return {
    is: known,
    because: `${dates.length} events, ${sure === most ? most : `${sure} to ${most}`} in the fullest year`,
  };
}

interface Span {
  readonly first: string;
  readonly last: string;
}

/** All the days an event may have happened on; as text, in which every month may have 31. */
function spanOf(date: string | null): Span {
  if (date === null) return { first: '0000-01-01', last: '9999-12-31' };
  return { first: date + '-01-01'.slice(date.length - 4), last: date + '-12-31'.slice(date.length - 4) };
}

/** The most events that twelve months hold, whenever these begin. */
function fullestYear(spans: readonly Span[], isIn: (span: Span, from: string, to: string) => boolean): number {
  const starts = spans.flatMap(({ first, last }) => [first, last]);
  return Math.max(
    1,
    ...starts.map((from) => {
      const to = String(Number(from.slice(0, 4)) + 1).padStart(4, '0') + from.slice(4);
      return spans.filter((span) => isIn(span, from, to)).length;
    }),
  );
}

function classOf(inYear: number): Frequency | null {
  if (inYear > 5) return 'frequent';
  return inYear >= 2 ? 'occasional' : null;
}
