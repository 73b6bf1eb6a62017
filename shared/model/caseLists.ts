import { BY_NOTHING_ELSE } from './ownRule.ts';
import type { AnyRecord, CaseFile, Kind, RecordOf } from './records.ts';

/** Kinds of which a case file holds exactly one. */
export type SingleKind = 'athlete' | 'case';
export type ListedKind = Exclude<Kind, SingleKind>;

/** The list of a case file that holds each kind. The only place that knows. */
export const LISTS = {
  injury: 'injuries',
  bodyMeasurement: 'bodyMeasurements',
  shoulderRecord: 'shoulderRecords',
  instabilityEvent: 'instabilityEvents',
  neurovascularCheck: 'neurovascularChecks',
  provocationTest: 'provocationTests',
  questionnaireTotal: 'questionnaireTotals',
  screeningSession: 'screeningSessions',
  screeningResult: 'screeningResults',
  jumpTest: 'jumpTests',
  jumpTrial: 'jumpTrials',
  ownMovement: 'ownMovements',
  ownRule: 'ownRules',
  movementTrial: 'movementTrials',
  landmarkTrack: 'landmarkTracks',
  pointRepeat: 'pointRepeats',
  still: 'stills',
  trialEvent: 'trialEvents',
  enteredMeasure: 'enteredMeasures',
  findingDecision: 'findingDecisions',
  report: 'reports',
  media: 'media',
} as const satisfies { [K in ListedKind]: keyof CaseFile };

export function isSingle(kind: Kind): kind is SingleKind {
  return kind === 'athlete' || kind === 'case';
}

/** All records of one kind in a case file, in the order they were made. */
export function recordsOf<K extends Kind>(file: CaseFile, kind: K): readonly RecordOf<K>[] {
  const any: Kind = kind;
  const records: readonly AnyRecord[] = isSingle(any) ? [file[any]] : file[LISTS[any]];
  // The compiler cannot follow a kind to the type of its list; LISTS is checked above, so the cast holds.
  return records as readonly RecordOf<K>[];
}

export function findRecord<K extends Kind>(file: CaseFile, kind: K, id: string): RecordOf<K> | null {
  return recordsOf(file, kind).find((record) => record.id === id) ?? null;
}

/** The file with one record put in its place (or added at the end), or taken out if `record` is null. */
export function withRecord(file: CaseFile, kind: Kind, id: string, record: AnyRecord | null): CaseFile {
  if (isSingle(kind)) return { ...file, [kind]: record };
  const list: readonly AnyRecord[] = recordsOf(file, kind);
  const at = list.findIndex((one) => one.id === id);
  const next =
    record === null ? list.filter((one) => one.id !== id) : at < 0 ? [...list, record] : list.with(at, record);
  return { ...file, [LISTS[kind]]: next };
}

/** A case file with nothing in it but the case and its athlete. */
export function emptyCaseFile(caseRecord: RecordOf<'case'>, athlete: RecordOf<'athlete'>): CaseFile {
  const lists = Object.fromEntries(Object.values(LISTS).map((list) => [list, []]));
  return { revision: 0, judgedBy: BY_NOTHING_ELSE, case: caseRecord, athlete, ...lists } as unknown as CaseFile;
}
