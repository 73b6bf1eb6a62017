import type { Fact } from './assessment.ts';
import { lowerFirst } from '../format/letterCase.ts';
import type { BatteryItem } from '../knowledge/screening/battery.ts';
import { batteryById, batteryItem } from '../knowledge/screening/index.ts';
import { measureById } from '../knowledge/measures/index.ts';
import { regionGroup } from '../knowledge/regions.ts';
import type { CaseFile } from '../model/records.ts';
import { GRADES, type ScreeningResult, type ScreeningSession } from '../model/screening.ts';
import { measured, type Source } from '../quantity.ts';
import { convert, type Unit } from '../units.ts';
import { computed, type FactParts, makeFact, unknown } from './makeFact.ts';

/** What each screening result says, pain apart from the result, and what the graded tests of a session say together. */
export function factsFromScreening(file: CaseFile): Fact[] {
  return file.screeningSessions.flatMap((session) => {
    const results = file.screeningResults.filter((result) => result.sessionId === session.id);
    return [...results.flatMap((result) => factsOfResult(result, session)), ...gradesTogether(results, session)];
  });
}

function factsOfResult(result: ScreeningResult, session: ScreeningSession): Fact[] {
  const item = batteryItem(result.itemId);
  const base = {
    from: { kind: 'screeningResult', id: result.id },
    takenOn: session.heldOn,
    provenance: session.rater === '' ? 'screening' : `screening, rated by ${session.rater}`,
    side: result.side,
  } as const;
  const facts: Fact[] = [];
  if (item !== null) {
    const value = valueOf(result, item);
    if (value !== null) facts.push(makeFact({ ...base, measure: item.measure, label: item.label, value }));
  }
  if (result.painNrs !== null) {
    const nrs = result.painNrs;
    facts.push(
      makeFact({
        ...base,
        measure: `pain.${regionGroup(item?.region ?? 'whole-body')}`,
        // The item keeps pain in one test from standing for pain in another.
        phase: result.itemId,
        label: `Pain in ${lowerFirst(item?.label ?? result.itemId)}`,
        value: computed(() => measured('NRS', 'pain', nrs, '{score}', 'a rating given by the athlete')),
      }),
    );
  }
  return facts;
}

function valueOf(result: ScreeningResult, item: BatteryItem): FactParts['value'] | null {
  if (item.kind === 'graded') return result.grade === null ? null : { kind: 'grade', grade: result.grade };
  if (item.kind === 'clearing') return result.isPositive === null ? null : { kind: 'flag', flag: result.isPositive };
  const { valueSi } = result;
  const { unit } = item;
  if (valueSi === null || unit === null) return null;
  const error = standardError(item.measure, unit);
  return computed(() =>
    measured(
      item.measure,
      item.label,
      valueSi,
      unit,
      error?.u ?? 'no error figure is known for this test',
      error?.source ?? null,
    ),
  );
}

/** The standard error of a test, where a source gives one: conventions are used for borders only. */
export function standardError(measureId: string, unit: Unit): { readonly u: number; readonly source: Source } | null {
  const measure = measureById(measureId);
  const border = measure?.error?.border ?? null;
  if (measure === null || measure.error === null || border === null || measure.displayUnit === null) return null;
  if (measure.error.source.status === 'convention') return null;
  return { u: convert(border, measure.displayUnit, unit) / 1.96, source: measure.error.source };
}

function gradesTogether(results: readonly ScreeningResult[], session: ScreeningSession): Fact[] {
  const graded = (batteryById(session.batteryId)?.items ?? []).filter((item) => item.kind === 'graded');
  if (graded.length === 0) return [];
  const base = {
    from: { kind: 'screeningSession', id: session.id },
    takenOn: session.heldOn,
    provenance: 'from the graded tests of the session',
  } as const;
  const byItem = graded.map((item) => ({ item, grades: gradesOf(item, results) }));
  const differ = byItem
    .filter(({ item, grades }) => item.hasSides && grades.length === 2)
    .map(({ item, grades }) =>
      makeFact({
        ...base,
        measure: 'grade.sidesDiffer',
        phase: item.id,
        label: `Sides graded differently: ${lowerFirst(item.label)}`,
        value: { kind: 'flag', flag: new Set(grades).size > 1 },
      }),
    );
  const missing = byItem.filter(({ item, grades }) => grades.length < (item.hasSides ? 2 : 1));
  const lowest = GRADES.findLast((grade) => byItem.some(({ grades }) => grades.includes(grade)));
  const isSettled = lowest === 'not-met' || missing.length === 0;
  return [
    ...differ,
    makeFact({
      ...base,
      measure: 'grade.lowest',
      value:
        lowest !== undefined && isSettled
          ? { kind: 'grade', grade: lowest }
          : unknown(`not graded yet: ${missing.map(({ item }) => lowerFirst(item.label)).join(', ')}`),
    }),
  ];
}

function gradesOf(item: BatteryItem, results: readonly ScreeningResult[]): string[] {
  return results.filter((result) => result.itemId === item.id).flatMap(({ grade }) => (grade === null ? [] : [grade]));
}
