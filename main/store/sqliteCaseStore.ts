import fs from 'node:fs';
import path from 'node:path';
import { toFailure } from '../../shared/errors.ts';
import { emptyCaseFile, isSingle, LISTS } from '../../shared/model/caseLists.ts';
import type { Door } from '../../shared/contract/channels.ts';
import type { Change, Edit } from '../../shared/model/edit.ts';
import type { RecordChange } from '../../shared/model/recordChanges.ts';
import {
  type AnyRecord,
  type CaseFile,
  isOfAthlete,
  type Kind,
  KINDS,
  type RecordOf,
} from '../../shared/model/records.ts';
import { notInStore } from '../../shared/ports/notInStore.ts';
import { numberAfter } from '../../shared/ports/numberAfter.ts';
import type { CaseStore, EditState, Erased, ShelfRow } from '../../shared/ports/caseStore.ts';
import type { BatteryStore } from '../../shared/ports/batteryStore.ts';
import type { RuleStore } from '../../shared/ports/ruleStore.ts';
import { isOvertaken, planCase, planEdits, planRedo, planUndo, type Step } from '../../shared/ports/editing.ts';
import { searchText, searchWords } from '../../shared/ports/searchText.ts';
import { copyBeforeMigration } from './copyBeforeMigration.ts';
import { configure, type Database, openDatabase } from './database.ts';
import { migrate, type Migrations, readMigrations, refuseNewer, schemaVersion } from './migrate.ts';
import { prepareStatements, type Statements } from './statements.ts';
import { corrupt, storeError } from './storeErrors.ts';
import { type Holder, lockStore } from './storeLock.ts';
import { fromJson, fromRow, type Row, stepChange, TABLES, toJson, toRow } from './tables.ts';
import { sqliteBatteries } from './sqliteBatteryStore.ts';
import { sqliteRules } from './sqliteRuleStore.ts';
import { verifyStore } from './verifyStore.ts';

export const DATABASE_FILE = 'cases.sqlite';

/** Kinds of file whose columns a person may have to name. */
export interface SqliteCaseStore extends CaseStore {
  /** Whether any record names a file of the media store. */
  isFileKept(sha256: string): Promise<boolean>;
  /** How files with these heads were read last, as JSON; null if it is not kept. `door` is the kind of file. */
  mapping(door: Door, heads: readonly string[]): Promise<string | null>;
  rememberMapping(door: Door, heads: readonly string[], mapping: object, at: string): Promise<void>;
  /** All of them, used last first. */
  mappings(): Promise<readonly { door: string; heads: string; mapping: string; usedAt: string }[]>;
  forgetMapping(door: Door, heads: readonly string[]): Promise<void>;
  readonly rules: RuleStore;
  readonly batteries: BatteryStore;
  /** Number of the latest migration. */
  readonly schemaVersion: number;
}

/**
 * Opens the case store of a folder, making it if it is not there, for this program alone. Refuses rather than degrades.
 * @throws DomainError 'store-locked', 'store-unwritable', 'store-newer', 'store-corrupt'
 */
export function openSqliteCaseStore(
  folder: string,
  holder: Holder,
  migrations: Migrations = readMigrations(path.resolve(import.meta.dirname, '../../migrations')),
): SqliteCaseStore {
  let release: (() => void) | null = null;
  let database: Database | null = null;
  try {
    makeFolder(path.resolve(folder));
    release = lockStore(folder, holder);
    database = openDatabase(path.join(folder, DATABASE_FILE));
    refuseNewer(database, migrations, folder);
    const damage = prepared(folder, database, (one) => String(one.pragma('quick_check(1)', { simple: true })));
    if (damage !== 'ok') throw corrupt(folder, damage);
    configure(database);
    copyBeforeMigration(database, folder, migrations.length);
    migrate(database, migrations);
    return caseStore(database, prepared(folder, database, prepareStatements), folder, release);
  } catch (thrown) {
    database?.close();
    release?.();
    throw storeError(thrown, folder);
  }
}

/** With its parents. Node's own recursion never ends where the system denies a folder, as below /proc on Linux. */
function makeFolder(folder: string): void {
  if (fs.existsSync(folder)) return;
  makeFolder(path.dirname(folder));
  fs.mkdirSync(folder, { mode: 0o700 });
}

/** On a layout that is whole every statement can be prepared, so one that cannot means that the layout is not. */
function prepared<T>(folder: string, database: Database, prepare: (database: Database) => T): T {
  try {
    return prepare(database);
  } catch (thrown) {
    throw corrupt(folder, toFailure(thrown).message);
  }
}

function caseStore(database: Database, sql: Statements, folder: string, release: () => void): SqliteCaseStore {
  async function guard<T>(work: () => T): Promise<T> {
    try {
      return work();
    } catch (thrown) {
      throw storeError(thrown, folder);
    }
  }
  /** One transaction around one method: all of it or nothing, and on disk when it returns. */
  const write = <T>(work: () => T): Promise<T> => guard(() => database.transaction(work).immediate());
  const read = <T>(work: () => T): Promise<T> => guard(() => database.transaction(work).deferred());

  const rules = prepared(folder, database, () => sqliteRules(database, { read, write }));
  const batteries = prepared(folder, database, () => sqliteBatteries(database, { read, write }));

  function rerun(caseId: string, step: Step | null, at: string): EditState {
    if (step !== null) {
      const file = readCase(sql, caseId);
      const isDone = step.state === 'done';
      const later = changesSince(sql, caseId, step);
      const changes = isDone ? planUndo(file, step, later) : planRedo(file, step, later);
      writeRecords(sql, caseId, changes);
      sql.setStepState.run({ caseId, step: step.step, state: isDone ? 'undone' : 'done' });
      settle(sql, caseId, changes, at);
    }
    return readState(sql, caseId);
  }

  function edit(caseId: string, edits: readonly Edit[], at: string, continues: boolean): EditState {
    const file = readCase(sql, caseId);
    const latest = readStep(sql, sql.latestStep.get(caseId));
    const isFree = latest !== null && !isOvertaken(latest, changesSince(sql, caseId, latest));
    const plan = planEdits(file, edits, isFree ? latest : null, at, continues);
    const step = latest?.step ?? 0;
    if (plan.amends !== null) {
      sql.amendStep.run({ caseId, step, at });
      sql.amendChange.run({ caseId, step, after: toJson(plan.amends.after) });
    } else if (plan.changes.length > 0) {
      if (plan.isUndoable) sql.abandonUndone.run(caseId);
      writeStep(sql, caseId, step + 1, plan, at);
    }
    writeRecords(sql, caseId, plan.changes);
    settle(sql, caseId, plan.changes, at);
    return readState(sql, caseId);
  }

  return {
    schemaVersion: schemaVersion(database),
    rules: rules.store,
    batteries: batteries.store,
    create: (edits, at) => write(() => void openCases(sql, [edits], at)),
    createAll: (cases, at, { id: rosterId, fileName }) =>
      write(() => {
        for (const caseId of openCases(sql, cases, at)) sql.insertRosterCase.run({ caseId, rosterId, fileName, at });
      }),
    apply: (caseId, edits, at, continues = false) => write(() => edit(caseId, edits, at, continues)),
    applyAll: (cases, at) =>
      write(() => {
        for (const { caseId, edits } of cases) edit(caseId, edits, at, false);
      }),
    undo: (caseId, at) => write(() => rerun(caseId, readStep(sql, sql.undoable.get(caseId)), at)),
    redo: (caseId, at) => write(() => rerun(caseId, readStep(sql, sql.redoable.get(caseId)), at)),
    nextNumber: (year) =>
      read(() =>
        numberAfter(
          year,
          sql.numbers.all(`${year}-*`).map((row) => row.number),
        ),
      ),
    isFileKept: (sha256) => read(() => (sql.isFileKept.get(sha256)?.kept ?? 0) > 0),
    mapping: (door, heads) => read(() => sql.mapping.get({ door, heads: JSON.stringify(heads) })?.mapping ?? null),
    rememberMapping: (door, heads, mapping, at) =>
      write(() => {
        const row = { door, heads: JSON.stringify(heads), mapping: JSON.stringify(mapping), at };
        sql.rememberMapping.run(row);
      }),
    mappings: () => read(() => sql.mappings.all()),
    forgetMapping: (door, heads) =>
      write(() => {
        sql.forgetMapping.run({ door, heads: JSON.stringify(heads) });
      }),
    erase: async (caseId) => {
      const erased = await write(() => eraseAthlete(sql, caseId));
      // What was deleted is overwritten, not only unlinked; the log before it is cut off.
      await guard(() => {
        sql.mergeWords.run();
        database.exec('VACUUM');
        database.pragma('wal_checkpoint(TRUNCATE)');
      });
      return erased;
    },
    writeSummaries: (summaries) =>
      write(() => {
        for (const [caseId, { missing, cautions }] of summaries) {
          requireCase(sql, caseId);
          sql.writeSummary.run({ caseId, missing: JSON.stringify(missing), cautions: JSON.stringify(cautions) });
        }
      }),
    shelf: ({ search, archived, offset, limit }) =>
      read(() => {
        const words = searchWords(search).map((word) => `"${word.replaceAll('"', '""')}"*`);
        const filter = { archived: Number(archived), words: JSON.stringify(words), wordCount: words.length };
        const rows = sql.shelf.all({ ...filter, limit, offset }).map((row) => shelfRow(sql, row, archived, words[0]));
        return { total: sql.shelfCount.get(filter)?.total ?? 0, rows };
      }),
    open: (caseId) => read(() => ({ ...readCase(sql, caseId), judgedBy: rules.judgedBy(caseId) })),
    editState: (caseId) => read(() => readState(sql, caseId)),
    history: (caseId, limit) =>
      read(() => {
        requireCase(sql, caseId);
        return sql.history.all(caseId, limit).map(
          (row): Change => ({
            step: Number(row['step']),
            at: String(row['at']),
            ...stepChange(row),
            isUndone: row['state'] !== 'done',
            label: String(row['label']),
          }),
        );
      }),
    lastEditAt: (caseId) =>
      read(() => {
        requireCase(sql, caseId);
        return sql.lastEdit.get({ caseId })?.at ?? '';
      }),
    casesOfSameAthlete: (caseId) =>
      read(() => {
        requireCase(sql, caseId);
        return sql.siblings.all(caseId).map((row) => row.id);
      }),
    people: () => read(() => sql.people.all().map((row) => ({ ...row, isOpenIntake: row.isOpenIntake === 1 }))),
    rosters: () =>
      read(() => {
        const rosters = Map.groupBy(sql.rosterCases.all(), ({ rosterId }) => rosterId);
        return [...rosters].map(([rosterId, rows]) => ({
          rosterId,
          fileName: rows[0]?.fileName ?? '',
          takenAt: rows[0]?.takenAt ?? '',
          cases: rows.map(({ caseId, athleteName, revision }) => ({ caseId, athleteName, isWorkedOn: revision > 0 })),
        }));
      }),
    screenings: () => read(() => sql.screenings.all()),
    unjudged: () => read(() => sql.unjudged.all().map(({ caseId }) => caseId)),
    keptFiles: () =>
      read(() => sql.records.media.all.all().map((row) => fromRow(TABLES.media, row) as RecordOf<'media'>)),
    verify: () => read(() => [...verifyStore(database, sql), ...rules.problems(), ...batteries.problems()]),
    close: async () => {
      database.close();
      release();
    },
  };
}

/** @returns the id of each */
function openCases(sql: Statements, cases: readonly (readonly Edit[])[], at: string): string[] {
  const plans = cases.map((edits) => {
    const opened = edits.find((edit) => edit.kind === 'case');
    const record = opened?.op === 'create' ? opened.record : null;
    const isKnown = !edits.some((edit) => edit.kind === 'athlete');
    const known = isKnown && record !== null ? readAthlete(sql, record.athleteId) : null;
    return { caseId: record?.id ?? '', plan: planCase(edits, known) };
  });
  for (const { caseId, plan } of plans) {
    writeStep(sql, caseId, 1, plan, at);
    writeRecords(sql, caseId, plan.changes);
    sql.insertState.run({ caseId, at });
  }
  return plans.map(({ caseId }) => caseId);
}

/** Every record, step and word of the athlete of a case, owned before owner. */
function eraseAthlete(sql: Statements, caseId: string): Erased {
  const { athlete } = readCase(sql, caseId);
  const caseIds = sql.siblings.all(caseId).map(({ id }) => id);
  const files = new Set(caseIds.flatMap((id) => readCase(sql, id).media.map(({ sha256 }) => sha256)));
  for (const id of caseIds) {
    sql.forgetWords.run({ caseId: id, athleteId: athlete.id });
    sql.forgetChanges.run(id);
    sql.forgetSteps.run(id);
    sql.forgetState.run(id);
    for (const kind of KINDS.toReversed()) if (kind !== 'athlete') sql.records[kind].deleteOfCase.run({ caseId: id });
  }
  sql.records.athlete.delete.run(athlete.id);
  return { caseIds, files: [...files].filter((sha256) => sql.isFileKept.get(sha256)?.kept === 0) };
}

function requireCase(sql: Statements, caseId: string): { readonly revision: number } {
  const state = sql.state.get(caseId);
  if (state === undefined) throw notInStore('case', caseId);
  return state;
}

function readCase(sql: Statements, caseId: string): CaseFile {
  const { revision } = requireCase(sql, caseId);
  const of = <K extends Kind>(kind: K) =>
    sql.records[kind].ofCase.all({ caseId }).map((row) => fromRow(TABLES[kind], row)) as RecordOf<K>[];
  const [opened] = of('case');
  const [athlete] = of('athlete');
  if (opened === undefined || athlete === undefined) throw notInStore('case', caseId);
  const lists = KINDS.filter((kind) => !isSingle(kind)).map((kind) => [LISTS[kind], of(kind)]);
  return { ...emptyCaseFile(opened, athlete), ...Object.fromEntries(lists), revision };
}

/** An athlete with everything on file of theirs, whatever the case. */
function readAthlete(sql: Statements, athleteId: string): Pick<CaseFile, 'athlete'> & Partial<CaseFile> {
  const row = sql.records.athlete.byId.get(athleteId);
  if (row === undefined) throw notInStore('athlete', athleteId);
  const lists = sql.ofAthlete.flatMap(({ kind, rows }) =>
    isSingle(kind) ? [] : [[LISTS[kind], rows.all({ athleteId }).map((one) => fromRow(TABLES[kind], one))]],
  );
  return { ...Object.fromEntries(lists), athlete: fromRow(TABLES.athlete, row) as RecordOf<'athlete'> };
}

function readState(sql: Statements, caseId: string): EditState {
  const { revision } = requireCase(sql, caseId);
  return { revision, undo: labelOf(sql.undoable.get(caseId)), redo: labelOf(sql.redoable.get(caseId)) };
}

function labelOf(step: Row | undefined): string | null {
  return step === undefined ? null : String(step['label']);
}

function readStep(sql: Statements, row: Row | undefined): Step | null {
  if (row === undefined) return null;
  const step = Number(row['step']);
  return {
    step,
    at: String(row['at']),
    label: String(row['label']),
    state: row['state'] as Step['state'],
    isUndoable: row['is_undoable'] === 1,
    changes: sql.changesOfStep.all(String(row['case_id']), step).map(stepChange),
  };
}

function changesSince(sql: Statements, caseId: string, { step }: Step) {
  return sql.changesSince.all({ caseId, step }).map(stepChange);
}

function writeStep(
  sql: Statements,
  caseId: string,
  step: number,
  { label, isUndoable, changes }: { label: string; isUndoable: boolean; changes: readonly RecordChange[] },
  at: string,
): void {
  sql.insertStep.run({ caseId, step, at, label, isUndoable: Number(isUndoable) });
  for (const { kind, recordId, op, before, after } of changes) {
    sql.insertChange.run({ caseId, step, kind, recordId, op, before: toJson(before), after: toJson(after) });
  }
}

/** Records and their search rows. A record made again by undo returns to the place it was first made at. */
function writeRecords(sql: Statements, caseId: string, changes: readonly RecordChange[]): void {
  for (const { kind, recordId, op, record } of changes) {
    const { insert, update, delete: remove } = sql.records[kind];
    const place = sql.placeOf.get(recordId, kind)?.place ?? 0;
    if (record === null) {
      remove.run(recordId);
      sql.unindex.run(place);
    } else if (op === 'create') {
      insert.run({ ...toRow(TABLES[kind], record), place });
      const athleteId = athleteOf(sql, caseId, kind, record);
      sql.index.run({ place, body: searchText(record), caseId: athleteId === null ? caseId : null, athleteId });
    } else {
      update.run(toRow(TABLES[kind], record));
      sql.reindex.run({ place, body: searchText(record) });
    }
  }
}

/** Whose athlete a record describes; null for records of a single case. */
function athleteOf(sql: Statements, caseId: string, kind: Kind, record: AnyRecord): string | null {
  if (kind === 'athlete') return record.id;
  return isOfAthlete(kind) ? (sql.athleteOf.get(caseId)?.athleteId ?? null) : null;
}

/** Counts up the revision of every case that shows what was changed. */
function settle(sql: Statements, caseId: string, changes: readonly RecordChange[], at: string): void {
  sql.touch.run({ caseId, at });
  if (changes.some(({ kind }) => isOfAthlete(kind))) sql.countUpSiblings.run({ caseId });
}

function shelfRow(sql: Statements, row: Row, isArchived: boolean, word: string | undefined): ShelfRow {
  return {
    caseId: String(row['case_id']),
    number: String(row['number']),
    athleteName: String(row['name']),
    purpose: row['purpose'] as ShelfRow['purpose'],
    touchedAt: String(row['touched_at']),
    isInvented: row['is_invented'] === 1,
    isArchived,
    missing: fromJson(row['missing'] ?? null) as string[],
    cautions: fromJson(row['cautions'] ?? null) as string[],
    match: word === undefined ? null : (sql.match.get(word, Number(row['found_place']))?.marked ?? null),
  };
}
