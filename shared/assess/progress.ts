import { judgeChange } from '../kernel/change/judgeChange.ts';
import { meanReading } from '../kernel/uncertainty/meanReading.ts';
import { measureById } from '../knowledge/measures/index.ts';
import { isKnown, measured, type Quantity } from '../quantity.ts';
import { convert, type Unit } from '../units.ts';
import type { Fact } from './assessment.ts';

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

/** Measures taken on two days and more. Heights are compared only with heights of the same method and arms. */
export function progress(facts: readonly Fact[]): Progress[] {
  const groups = new Map<string, Group>();
  for (const fact of facts) {
    const { value, takenOn, measure } = fact;
    if (value.kind !== 'number' || !isKnown(value.reading) || takenOn === null || measure.startsWith('pain.')) continue;
    const alike = [measure, fact.side, fact.movement, fact.phase, JSON.stringify(fact.height), fact.from.kind].join(
      '|',
    );
    const group: Group = groups.get(alike) ?? { fact, days: new Map(), ways: new Map() };
    groups.set(alike, group);
    group.days.set(takenOn, [...(group.days.get(takenOn) ?? []), value.reading]);
    group.ways.set(takenOn, `${fact.provenance}|${fact.takenAs ?? ''}`);
  }
  return [...groups.values()].flatMap((group) => (group.days.size < 2 ? [] : [judged(group)]));
}

interface Group {
  readonly fact: Fact;
  readonly days: Map<string, Quantity[]>;
  /** How, and by whom, it was taken on each day. */
  readonly ways: Map<string, string>;
}

function judged({ fact, days: readings, ways }: Group): Progress {
  const days = [...readings]
    .toSorted(([a], [b]) => (a < b ? -1 : 1))
    .map(([on, some]) => ({ on, quantity: ofDay(some) }));
  const [before, after] = days.slice(-2).map(({ quantity }) => quantity) as [Quantity, Quantity]; // two days and more
  const displayUnit = fact.displayUnit ?? after.unit;
  const detectable = detectableFor(fact.measure, after.unit);
  const said = judgeChange(before, after, detectable);
  const shared = { label: fact.label, side: fact.side, displayUnit, days };
  // Taken in another way or by another person, as the facts of a re-test have it: nobody can say.
  const [then, last] = days.slice(-2).map(({ on }) => ways.get(on));
  if ('unknown' in said || then !== last) return { ...shared, change: null, verdict: 'cannot say', noise: null };
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
