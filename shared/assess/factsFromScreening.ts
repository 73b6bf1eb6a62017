import type { Fact } from './assessment.ts';
import { canonicalJson } from '../canonicalJson.ts';
import { lowerFirst } from '../format/letterCase.ts';
import type { Battery, BatteryItem, Trials } from '../knowledge/screening/battery.ts';
import { combineFormula } from '../knowledge/screening/combineTrials.ts';
import { batteryOf } from '../knowledge/screening/index.ts';
import { isPossible } from '../knowledge/screening/isPossible.ts';
import { OWN_CLEARING } from '../knowledge/screening/readBattery.ts';
import { measureById } from '../knowledge/measures/index.ts';
import { regionGroup } from '../knowledge/regions.ts';
import type { Athlete } from '../model/athlete.ts';
import type { CaseFile } from '../model/records.ts';
import { GRADES, type ScreeningResult, type ScreeningSession } from '../model/screening.ts';
import { measured, type Source } from '../quantity.ts';
import { convert, type Unit } from '../units.ts';
import { overLimb, overLimbMeasure } from './overLimb.ts';
import { computed, type FactParts, makeFact, unknown } from './makeFact.ts';

/** What each screening result says, pain apart from the result, and what the graded tests of a session say together. */
export function factsFromScreening(file: CaseFile): Fact[] {
  return file.screeningSessions.flatMap((session) => {
    const battery = batteryOf(session);
    const results = file.screeningResults.filter((result) => result.sessionId === session.id);
    return [
      ...results.flatMap((result) => factsOfResult(result, session, battery, file.athlete)),
      ...gradesTogether(results, session, battery),
    ];
  });
}

function factsOfResult(
  result: ScreeningResult,
  session: ScreeningSession,
  battery: Battery | null,
  athlete: Athlete,
): Fact[] {
  const item = battery?.items.find(({ id }) => id === result.itemId) ?? null;
  const base = {
    from: { kind: 'screeningResult', id: result.id },
    takenOn: session.heldOn,
    provenance: session.rater === '' ? 'screening' : `screening, rated by ${session.rater}`,
    side: result.side,
  } as const;
  const facts: Fact[] = [];
  if (item !== null) {
    const value = valueOf(result, item);
    const isOwn = measureById(item.measure) === null;
    if (value !== null) {
      facts.push(
        makeFact({
          ...base,
          measure: item.measure,
          label: item.label,
          value,
          takenAs: takenAs(item, result),
          ...(isOwn ? { ownUnit: item.displayUnit } : {}),
          // A clearing test of one's own is told from another by its item.
          ...(item.measure === OWN_CLEARING ? { phase: placeOf(item, result, session) } : {}),
        }),
      );
    }
  }
  const share = item === null ? null : overLimbMeasure(item);
  const [taken] = facts;
  if (item !== null && share !== null && taken !== undefined) {
    facts.push(
      makeFact({
        ...base,
        measure: share,
        label: `${item.label} over ${item.dividedBy?.replace('-', ' ')}`,
        value: overLimb(item, result.side, taken.value, athlete),
        takenAs: takenAs(item, result),
        ...(measureById(share) === null ? { ownUnit: '%' as const } : {}),
      }),
    );
  }
  if (result.painNrs !== null) {
    const nrs = result.painNrs;
    facts.push(
      makeFact({
        ...base,
        measure: `pain.${regionGroup(item?.region ?? 'whole-body')}`,
        // The item keeps pain in one test from standing for pain in another.
        phase: placeOf(item, result, session),
        label: `Pain in ${lowerFirst(item?.label ?? result.itemId)}`,
        value: computed(() => measured('NRS', 'pain', nrs, '{score}', 'a rating given by the athlete')),
      }),
    );
  }
  return facts;
}

/** The item across batteries: a copied one by the item of the program that it still is, one of one's own by its battery. */
function placeOf(item: BatteryItem | null, { itemId }: ScreeningResult, { batteryId }: ScreeningSession): string {
  if (item?.own === undefined) return itemId;
  return item.own.link ?? `${batteryId}/${itemId}`;
}

/** What two results must share beside rater and day to be compared: an error figure holds for nothing else. */
function takenAs(item: BatteryItem, { device, position, shoes }: ScreeningResult): string {
  const { kind, displayUnit, hasSides, trials, instructions, standard } = item;
  return canonicalJson({
    kind,
    displayUnit,
    hasSides,
    trials: trials ?? null,
    instructions,
    standard,
    device,
    position,
    shoes,
  });
}

function valueOf(result: ScreeningResult, item: BatteryItem): FactParts['value'] | null {
  if (item.kind === 'graded') return result.grade === null ? null : { kind: 'grade', grade: result.grade };
  if (item.kind === 'clearing') return result.isPositive === null ? null : { kind: 'flag', flag: result.isPositive };
  const { valueSi } = result;
  const { unit, own } = item;
  if (valueSi === null || unit === null) return null;
  if (own !== undefined && !isPossible(item, valueSi))
    return unknown('the value is beyond what this item says is possible');
  const error =
    item.own?.error === undefined || item.own.error === null ? standardError(item.measure, unit) : ownError(item);
  return computed(() => {
    const reading = measured(
      item.own?.link === null ? 'x' : item.measure,
      item.label,
      valueSi,
      unit,
      error?.u ?? 'no error figure is known for this test',
      error?.source ?? null,
    );
    return result.trialsSi === null || item.trials === undefined
      ? reading
      : { ...reading, working: { ...reading.working, ...fromTrials(item.trials, result.trialsSi, item, unit) } };
  });
}

/** How a result came from its trials. The error figure of the test is that of the result, not of a trial. */
function fromTrials(trials: Trials, valuesSi: readonly number[], { label }: BatteryItem, unit: Unit) {
  return {
    symbol: 'x',
    formula: combineFormula(trials.combine, valuesSi.length),
    inputs: valuesSi.map((value, i) => ({
      symbol: `x_${i + 1}`,
      quantity: measured(`x_${i + 1}`, `${label}, trial ${i + 1}`, value, unit, 'the error is that of the result'),
    })),
    variant: `${trials.combine} of the trials, as the battery says`,
  };
}

/** The standard error of a test, where a source gives one: conventions are used for borders only. */
export function standardError(measureId: string, unit: Unit): { readonly u: number; readonly source: Source } | null {
  const measure = measureById(measureId);
  const border = measure?.error?.border ?? null;
  if (measure === null || measure.error === null || border === null || measure.displayUnit === null) return null;
  if (measure.error.source.status === 'convention') return null;
  return { u: convert(border, measure.displayUnit, unit) / 1.96, source: measure.error.source };
}

/** The same from the figure given with an item of one's own. */
function ownError({ own, unit, displayUnit }: BatteryItem): { readonly u: number; readonly source: Source } | null {
  const error = own?.error ?? null;
  if (error?.border === undefined || error.border === null || unit === null || displayUnit === null) return null;
  return error.source.status === 'convention'
    ? null
    : { u: convert(error.border, displayUnit, unit) / 1.96, source: error.source };
}

function gradesTogether(
  results: readonly ScreeningResult[],
  session: ScreeningSession,
  battery: Battery | null,
): Fact[] {
  const graded = (battery?.items ?? []).filter((item) => item.kind === 'graded');
  if (graded.length === 0) return [];
  const base = {
    from: { kind: 'screeningSession', id: session.id },
    takenOn: session.heldOn,
    provenance: 'from the graded tests of the session',
  } as const;
  const byItem = graded.map((item) => ({ item, grades: gradesOf(item, results) }));
  const differ = byItem
    .filter(({ item, grades }) => item.hasSides && grades.length === 2 && isOfProgram(item))
    .map(({ item, grades }) =>
      makeFact({
        ...base,
        measure: 'grade.sidesDiffer',
        phase: item.own?.link ?? item.id,
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

/** Whether its meaning is one the rules know. */
function isOfProgram({ own }: BatteryItem): boolean {
  return own === undefined || own.link !== null;
}

function gradesOf(item: BatteryItem, results: readonly ScreeningResult[]): string[] {
  return results.filter((result) => result.itemId === item.id).flatMap(({ grade }) => (grade === null ? [] : [grade]));
}
