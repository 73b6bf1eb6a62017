import { formatDate } from '../format/number.ts';
import { measureById } from '../knowledge/measures/index.ts';
import { isKnown, measured, type Quantity } from '../quantity.ts';
import { convert } from '../units.ts';
import type { Fact } from './assessment.ts';
import { type FactParts, makeFact, unknown } from './makeFact.ts';
import { alikeKey, takenOtherwise } from './takenAlike.ts';

interface Taken {
  readonly fact: Fact;
  readonly reading: Quantity;
  readonly on: string;
}

/**
 * How far a result moved since it was last taken, in minimal detectable changes of its test: under 1 is within noise.
 * Only measures whose test has a figure for its error, and only if both results came about in the same way.
 */
export function factsFromRetests(facts: readonly Fact[]): Fact[] {
  const series = Map.groupBy(facts.flatMap(takenOf), ({ fact }) => alikeKey(fact));
  return [...series.values()].flatMap((taken) => {
    const inTime = taken.toSorted((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
    const newest = inTime.at(-1);
    const before = inTime.findLast(({ on }) => newest !== undefined && on < newest.on);
    return newest === undefined || before === undefined ? [] : [changeOf(before, newest)];
  });
}

function takenOf(fact: Fact): Taken[] {
  const { value, takenOn } = fact;
  const hasError = (measureById(fact.measure)?.error?.mdc ?? null) !== null;
  if (!hasError || fact.measure.startsWith('pain.') || takenOn === null) return [];
  return value.kind === 'number' && isKnown(value.reading) ? [{ fact, reading: value.reading, on: takenOn }] : [];
}

function changeOf(before: Taken, { fact, reading, on }: Taken): Fact {
  return makeFact({
    measure: 'retest.changeOverMdc',
    value: valueOf(before, { fact, reading, on }),
    from: fact.from,
    takenOn: on,
    side: fact.side,
    // Keeps the change of one result from standing for that of another.
    phase: fact.measure,
    recordId: fact.key,
    label: `Change since ${formatDate(before.on)}: ${fact.label}`,
    provenance: `${fact.label} of ${formatDate(on)} against that of ${formatDate(before.on)}`,
  });
}

function valueOf(before: Taken, { fact, reading }: Taken): FactParts['value'] {
  const measure = measureById(fact.measure);
  const mdc = measure?.error?.mdc ?? null;
  if (mdc === null || measure?.displayUnit === null || measure === null)
    return unknown('its test has no figure for its error');
  const otherwise = takenOtherwise(before.fact, fact);
  if (otherwise !== null) return unknown(otherwise);
  const change = Math.abs(convert(reading.value - before.reading.value, reading.unit, measure.displayUnit));
  return {
    kind: 'number',
    reading: measured(
      'Δ/MDC',
      'change over detectable change',
      change / mdc,
      '1',
      'a ratio to the error of the test itself',
    ),
  };
}
