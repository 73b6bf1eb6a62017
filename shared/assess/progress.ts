import { judgeChange } from '../kernel/change/judgeChange.ts';
import { meanReading } from '../kernel/uncertainty/meanReading.ts';
import { measureById } from '../knowledge/measures/index.ts';
import { isKnown, measured, type Quantity } from '../quantity.ts';
import { convert, type Unit } from '../units.ts';
import type { Fact } from './assessment.ts';
import { alikeKey, takenOtherwise } from './takenAlike.ts';

/** One measure over the days on which it was taken alike, and what its last change means. */
export interface Progress {
  readonly label: string;
  readonly side: Fact['side'];
  readonly displayUnit: Unit;
  /** In order; of several readings of one day their mean. */
  readonly days: readonly { readonly on: string; readonly quantity: Quantity }[];
  /** From the day before the last to the last. */
  readonly change: Quantity | null;
  /** Three answers, never two. */
  readonly verdict: 'real change' | 'within noise' | 'cannot say';
  /** A second value this near to the first says nothing, in the unit of the values; null: not known. */
  readonly noise: number | null;
}

/** Measures taken alike on two days and more. */
export function progress(facts: readonly Fact[]): Progress[] {
  const groups = new Map<string, Map<string, Taken[]>>();
  for (const fact of facts) {
    const { value, takenOn, measure } = fact;
    if (value.kind !== 'number' || !isKnown(value.reading) || takenOn === null || measure.startsWith('pain.')) continue;
    const alike = alikeKey(fact);
    const days = groups.get(alike) ?? new Map<string, Taken[]>();
    groups.set(alike, days);
    days.set(takenOn, [...(days.get(takenOn) ?? []), { fact, quantity: value.reading }]);
  }
  return [...groups.values()].flatMap((days) => (days.size < 2 ? [] : [judged(days)]));
}

interface Taken {
  readonly fact: Fact;
  readonly quantity: Quantity;
}

/** @param byDay two days and more */
function judged(byDay: ReadonlyMap<string, readonly Taken[]>): Progress {
  const inTime = [...byDay].toSorted(([a], [b]) => (a < b ? -1 : 1));
  const days = inTime.map(([on, taken]) => ({ on, quantity: ofDay(taken.map(({ quantity }) => quantity)) }));
  const [before, after] = days.slice(-2).map(({ quantity }) => quantity) as [Quantity, Quantity];
  // The last of a day tells how and by whom it was taken.
  const [then, fact] = inTime.slice(-2).map(([, taken]) => taken.at(-1)?.fact) as [Fact, Fact];
  const detectable = detectableFor(fact.measure, after.unit);
  const said = judgeChange(before, after, detectable);
  const shared = { label: fact.label, side: fact.side, displayUnit: fact.displayUnit ?? after.unit, days };
  if ('unknown' in said || takenOtherwise(then, fact) !== null)
    return { ...shared, change: null, verdict: 'cannot say', noise: null };
  return {
    ...shared,
    change: said.change,
    verdict: said.isBeyondError ? 'real change' : 'within noise',
    noise: detectable?.value ?? 2 * (said.change.u ?? 0),
  };
}

function ofDay(readings: readonly Quantity[]): Quantity {
  const [first, second] = readings as readonly [Quantity, ...Quantity[]]; // a day is made of its readings
  if (second === undefined) return first;
  return meanReading(
    first.working.symbol,
    `mean of ${first.working.name}`,
    readings.map(({ value }) => value),
    first.unit,
  );
}

/** The published minimal detectable change of a measure in the unit it is kept in; null: none is known. */
function detectableFor(id: string, unit: Unit): Quantity | null {
  const measure = measureById(id);
  const mdc = measure?.error?.mdc ?? null;
  if (measure === null || mdc === null || measure.displayUnit === null) return null;
  const value = convert(mdc, measure.displayUnit, unit);
  return measured('MDC', 'minimal detectable change, 95 %', value, unit, 0, measure.error?.source ?? null);
}
