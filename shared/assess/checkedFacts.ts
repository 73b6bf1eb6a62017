import { formatDate } from '../format/number.ts';
import { unlikeHeightsCompared } from '../kernel/check/unlikeHeightsCompared.ts';
import { isKnown, type Reading } from '../quantity.ts';
import type { Unit } from '../units.ts';
import type { CaseCheck, Fact } from './assessment.ts';

/** The fact that came of a record, under the record's own id or from the trial it belongs to; a known one before others. */
export function factKeyOf(facts: readonly Fact[], recordId: string, measure: string): string {
  const own = facts.filter(
    (one) => one.measure === measure && (one.from.id === recordId || one.key.includes(recordId)),
  );
  return (own.find(hasNumber) ?? own[0])?.key ?? recordId;
}

export function hasNumber({ value }: Fact): boolean {
  return value.kind === 'number' && isKnown(value.reading);
}

/** The first known value of a measure among some facts. */
export function readingOf<U extends Unit>(facts: readonly Fact[], measure: string, unit: U): Reading<U> {
  for (const fact of facts) {
    if (fact.measure !== measure || fact.value.kind !== 'number' || !isKnown(fact.value.reading)) continue;
    if (fact.value.reading.unit === unit) return fact.value.reading as Reading<U>;
  }
  return { unknown: 'not recorded' };
}

/** Of the same check asked of several records that it may belong to, the one that is content; else the first. */
export function contentOne(checks: readonly CaseCheck[]): CaseCheck[] {
  return [checks.find(({ verdict }) => verdict === 'fine') ?? checks[0]].filter((check) => check !== undefined);
}

/** Two heights that something sets side by side; nothing where one of them is not known. */
export function compared(a: Fact | undefined, b: Fact | undefined, about: string): CaseCheck[] {
  const [one, other] = [comparable(a), comparable(b)];
  return one === null || other === null ? [] : [unlikeHeightsCompared({ a: one, b: other, about })];
}

/** A known height with what it may be compared by. */
function comparable(fact: Fact | undefined): Parameters<typeof unlikeHeightsCompared>[0]['a'] | null {
  if (fact === undefined || fact.height === null || fact.value.kind !== 'number' || !isKnown(fact.value.reading))
    return null;
  const { reference, method, arms } = fact.height;
  const label = fact.takenOn === null ? fact.label : `${fact.label} of ${formatDate(fact.takenOn)}`;
  return { label, heightM: fact.value.reading.value, reference, method, arms: arms === 'not recorded' ? null : arms };
}
