import { isOfAthlete, type Kind, KINDS, RECORDS } from '../../shared/model/records.ts';
import type { Screening, ShelfPerson } from '../../shared/ports/caseStore.ts';
import type { Database, Statement } from './database.ts';
import { type Row, type Table, TABLES } from './tables.ts';

/** SQL condition that picks a kind's rows of one case, `:caseId`; follows the owners up to the case or its athlete. */
function partOfCase(kind: Kind): string {
  return partOf(kind, '(SELECT athlete_id FROM case_record WHERE id = :caseId)');
}

/** The same where the athlete is told by `athleteId`, SQL as well. */
function partOf(kind: Kind, athleteId: string): string {
  if (kind === 'case') return 'id = :caseId';
  if (kind === 'athlete') return `id = ${athleteId}`;
  const [owner, field] = RECORDS[kind].parent;
  const column = TABLES[kind].columns.find((one) => one.field === field)?.name;
  if (owner === 'case') return `${column} = :caseId`;
  if (owner === 'athlete') return `${column} = ${athleteId}`;
  return `${column} IN (SELECT id FROM ${TABLES[owner].name} WHERE ${partOf(owner, athleteId)})`;
}

/** Kinds that describe the athlete and so show in every case of theirs. */
export const OF_ATHLETE = KINDS.filter(isOfAthlete);

function ofAthleteStatements(database: Database) {
  return OF_ATHLETE.map((kind) => {
    const { name } = TABLES[kind];
    const sql = `SELECT * FROM ${name} WHERE ${partOf(kind, ':athleteId')} ORDER BY place`;
    return { kind, rows: database.prepare<[{ athleteId: string }], Row>(sql) };
  });
}

function recordStatements(database: Database, table: Table) {
  const names = table.columns.map((column) => column.name);
  return {
    ofCase: database.prepare<[{ caseId: string }], Row>(
      `SELECT ${names.join(', ')} FROM ${table.name} WHERE ${partOfCase(table.kind)} ORDER BY place`,
    ),
    all: database.prepare<[], Row>(`SELECT place, ${names.join(', ')} FROM ${table.name} ORDER BY place`),
    byId: database.prepare<[string], Row>(`SELECT place, ${names.join(', ')} FROM ${table.name} WHERE id = ?`),
    insert: database.prepare<[Row]>(
      `INSERT INTO ${table.name} (place, ${names.join(', ')}) VALUES (:place, ${names.map((name) => `:${name}`).join(', ')})`,
    ),
    update: database.prepare<[Row]>(
      `UPDATE ${table.name} SET ${names.map((name) => `${name} = :${name}`).join(', ')} WHERE id = :id`,
    ),
    delete: database.prepare<[string]>(`DELETE FROM ${table.name} WHERE id = ?`),
    deleteOfCase: database.prepare<[{ caseId: string }]>(`DELETE FROM ${table.name} WHERE ${partOfCase(table.kind)}`),
  };
}

interface RosterCase {
  readonly rosterId: string;
  readonly fileName: string;
  readonly takenAt: string;
  readonly caseId: string;
  readonly athleteName: string;
  readonly revision: number;
}

export type RecordStatements = ReturnType<typeof recordStatements>;

interface ShelfFilter {
  readonly archived: number;
  /** JSON list of full-text queries, one a word: a case is on the shelf if each is found in some record of it. */
  readonly words: string;
  readonly wordCount: number;
}

/** Cases that hold every word, each with the place of the first record that holds the first of them. */
const FOUND = `WITH found AS MATERIALIZED (
  SELECT owner.id AS owner_id, min(search.rowid) FILTER (WHERE word.key = 0) AS place
  FROM json_each(:words) AS word JOIN search ON search MATCH word.value
    JOIN case_record AS owner ON owner.id = search.case_id OR owner.athlete_id = search.athlete_id
  GROUP BY owner.id HAVING count(DISTINCT word.key) = :wordCount)`;
const ON_SHELF = `LEFT JOIN found ON owner_id = case_record.id
  WHERE (archived_on IS NOT NULL) = :archived AND (:wordCount = 0 OR owner_id IS NOT NULL)`;

/** Every statement the store runs, prepared once: a typing error in one of them shows as soon as a store is opened. */
export function prepareStatements(database: Database) {
  const prepare = <P extends unknown[], R = unknown>(sql: string): Statement<P, R> => database.prepare<P, R>(sql);
  return {
    records: Object.fromEntries(KINDS.map((kind) => [kind, recordStatements(database, TABLES[kind])])) as {
      readonly [K in Kind]: RecordStatements;
    },
    ofAthlete: ofAthleteStatements(database),
    athleteOf: prepare<[string], { athleteId: string }>('SELECT athlete_id AS athleteId FROM case_record WHERE id = ?'),
    state: prepare<[string], { revision: number; touched_at: string }>(
      'SELECT revision, touched_at FROM case_state WHERE case_id = ?',
    ),
    insertState: prepare<[{ caseId: string; at: string }]>(
      `INSERT INTO case_state (case_id, revision, touched_at, missing, cautions, is_judged, rules_digest)
       VALUES (:caseId, 0, :at, '[]', '[]', 0, (SELECT digest FROM rule_pack WHERE is_current = 1))`,
    ),
    touch: prepare<[{ caseId: string; at: string }]>(
      'UPDATE case_state SET revision = revision + 1, is_judged = 0, touched_at = :at WHERE case_id = :caseId',
    ),
    countUpSiblings: prepare<[{ caseId: string }]>(
      `UPDATE case_state SET revision = revision + 1, is_judged = 0 WHERE case_id <> :caseId AND case_id IN
         (SELECT id FROM case_record WHERE athlete_id = (SELECT athlete_id FROM case_record WHERE id = :caseId))`,
    ),
    writeSummary: prepare<[{ caseId: string; missing: string; cautions: string }]>(
      'UPDATE case_state SET missing = :missing, cautions = :cautions, is_judged = 1 WHERE case_id = :caseId',
    ),
    unjudged: prepare<[], { caseId: string }>(
      'SELECT case_id AS caseId FROM case_state JOIN case_record ON id = case_id WHERE is_judged = 0 ORDER BY place',
    ),
    siblings: prepare<[string], { id: string }>(
      `SELECT id FROM case_record WHERE athlete_id = (SELECT athlete_id FROM case_record WHERE id = ?) ORDER BY place`,
    ),
    numbers: prepare<[string], { number: string }>('SELECT number FROM case_record WHERE number GLOB ?'),
    caseIds: prepare<[], { id: string }>('SELECT id FROM case_record ORDER BY place'),

    people: prepare<[], Omit<ShelfPerson, 'isOpenIntake'> & { readonly isOpenIntake: number }>(
      `SELECT case_record.id AS caseId, athlete.id AS athleteId, name, birth_date AS birthDate,
         purpose = 'intake' AND archived_on IS NULL AS isOpenIntake
       FROM case_record JOIN athlete ON athlete.id = athlete_id ORDER BY case_record.place`,
    ),
    insertRosterCase: prepare<[{ caseId: string; rosterId: string; fileName: string; at: string }]>(
      'INSERT INTO roster_case (case_id, roster_id, file_name, taken_at) VALUES (:caseId, :rosterId, :fileName, :at)',
    ),
    rosterCases: prepare<[], RosterCase>(
      `SELECT roster_id AS rosterId, file_name AS fileName, taken_at AS takenAt, case_id AS caseId,
         name AS athleteName, revision
       FROM roster_case JOIN case_record ON case_record.id = case_id JOIN athlete ON athlete.id = athlete_id
         JOIN case_state USING (case_id)
       WHERE archived_on IS NULL ORDER BY taken_at DESC, case_record.place`,
    ),
    mapping: prepare<[{ door: string; heads: string }], { mapping: string }>(
      'SELECT mapping FROM column_mapping WHERE door = :door AND heads = :heads',
    ),
    rememberMapping: prepare<[{ door: string; heads: string; mapping: string; at: string }]>(
      `INSERT INTO column_mapping (door, heads, mapping, used_at) VALUES (:door, :heads, :mapping, :at)
       ON CONFLICT DO UPDATE SET mapping = :mapping, used_at = :at`,
    ),
    mappings: prepare<[], { door: string; heads: string; mapping: string; usedAt: string }>(
      'SELECT door, heads, mapping, used_at AS usedAt FROM column_mapping ORDER BY used_at DESC, door, heads',
    ),
    forgetMapping: prepare<[{ door: string; heads: string }]>(
      'DELETE FROM column_mapping WHERE door = :door AND heads = :heads',
    ),
    screenings: prepare<[], Screening>(
      `SELECT case_id AS caseId, held_on AS heldOn, battery_id AS batteryId, battery_version AS batteryVersion,
         json_extract(battery, '$.label') AS batteryLabel
       FROM screening_session JOIN case_record ON case_record.id = case_id
       WHERE archived_on IS NULL ORDER BY screening_session.place`,
    ),

    forgetChanges: prepare<[string]>('DELETE FROM change WHERE case_id = ?'),
    forgetSteps: prepare<[string]>('DELETE FROM edit_step WHERE case_id = ?'),
    forgetState: prepare<[string]>('DELETE FROM case_state WHERE case_id = ?'),
    forgetWords: prepare<[{ caseId: string; athleteId: string }]>(
      'DELETE FROM search WHERE case_id = :caseId OR athlete_id = :athleteId',
    ),
    /** Merges the pieces of the index, in which words of deleted rows stay behind. */
    mergeWords: prepare<[]>(`INSERT INTO search (search) VALUES ('optimize')`),
    isFileKept: prepare<[string], { kept: number }>('SELECT count(*) AS kept FROM media WHERE sha256 = ?'),

    latestStep: prepare<[string], Row>('SELECT * FROM edit_step WHERE case_id = ? ORDER BY step DESC LIMIT 1'),
    undoable: prepare<[string], Row>(
      `SELECT * FROM edit_step WHERE case_id = ? AND state = 'done' AND is_undoable = 1 ORDER BY step DESC LIMIT 1`,
    ),
    redoable: prepare<[string], Row>(
      `SELECT * FROM edit_step WHERE case_id = ? AND state = 'undone' ORDER BY step LIMIT 1`,
    ),
    insertStep: prepare<[{ caseId: string; step: number; at: string; label: string; isUndoable: number }]>(
      `INSERT INTO edit_step (case_id, step, at, label, state, is_undoable)
       VALUES (:caseId, :step, :at, :label, 'done', :isUndoable)`,
    ),
    abandonUndone: prepare<[string]>(`UPDATE edit_step SET state = 'abandoned' WHERE case_id = ? AND state = 'undone'`),
    setStepState: prepare<[{ caseId: string; step: number; state: string }]>(
      'UPDATE edit_step SET state = :state WHERE case_id = :caseId AND step = :step',
    ),
    amendStep: prepare<[{ caseId: string; step: number; at: string }]>(
      'UPDATE edit_step SET at = :at WHERE case_id = :caseId AND step = :step',
    ),
    insertChange: prepare<[Row]>(
      `INSERT INTO change (case_id, step, kind, record_id, op, before, after)
       VALUES (:caseId, :step, :kind, :recordId, :op, :before, :after)`,
    ),
    amendChange: prepare<[{ caseId: string; step: number; after: string | null }]>(
      'UPDATE change SET after = :after WHERE case_id = :caseId AND step = :step',
    ),
    changesOfStep: prepare<[string, number], Row>('SELECT * FROM change WHERE case_id = ? AND step = ? ORDER BY place'),
    /** Changes in force that other cases made to the records of a step, after it. */
    changesSince: prepare<[{ caseId: string; step: number }], Row>(
      `SELECT kind, record_id, op, before, after FROM change JOIN edit_step USING (case_id, step)
       WHERE record_id IN (SELECT record_id FROM change WHERE case_id = :caseId AND step = :step)
         AND case_id <> :caseId AND state = 'done'
         AND place > (SELECT min(place) FROM change WHERE case_id = :caseId AND step = :step) ORDER BY place`,
    ),
    placeOf: prepare<[string, string], { place: number }>(
      `SELECT min(place) AS place FROM change WHERE record_id = ? AND kind = ? AND op = 'create'`,
    ),
    history: prepare<[string, number], Row>(
      `SELECT step, at, kind, record_id, op, before, after, state, label
       FROM change JOIN edit_step USING (case_id, step) WHERE case_id = ? ORDER BY place DESC LIMIT ?`,
    ),
    /** What a replay of the whole store's history has to apply: all that is in force, and what is kept regardless. */
    changesInForce: prepare<[], Row>(
      `SELECT kind, record_id, op, before, after FROM change JOIN edit_step USING (case_id, step)
       WHERE state = 'done' OR kind IN ('report', 'media') ORDER BY place`,
    ),
    lastEdit: prepare<[{ caseId: string }], { at: string }>(
      `SELECT max(at) AS at FROM edit_step JOIN change USING (case_id, step)
       WHERE case_id IN (SELECT id FROM case_record WHERE athlete_id = (SELECT athlete_id FROM case_record WHERE id = :caseId))
         AND state = 'done' AND kind NOT IN ('report', 'media')
         AND (case_id = :caseId OR kind IN (${OF_ATHLETE.map((kind) => `'${kind}'`).join(', ')}))`,
    ),

    index: prepare<[{ place: number; body: string; caseId: string | null; athleteId: string | null }]>(
      'INSERT INTO search (rowid, body, case_id, athlete_id) VALUES (:place, :body, :caseId, :athleteId)',
    ),
    reindex: prepare<[{ place: number; body: string }]>('UPDATE search SET body = :body WHERE rowid = :place'),
    unindex: prepare<[number]>('DELETE FROM search WHERE rowid = ?'),
    indexed: prepare<[], { place: number; body: string }>('SELECT rowid AS place, body FROM search'),

    shelfCount: prepare<[ShelfFilter], { total: number }>(
      `${FOUND} SELECT count(*) AS total FROM case_record ${ON_SHELF}`,
    ),
    shelf: prepare<[ShelfFilter & { limit: number; offset: number }], Row>(
      `${FOUND} SELECT case_record.id AS case_id, number, name, purpose, touched_at, is_invented, missing, cautions,
         found.place AS found_place
       FROM case_record JOIN athlete ON athlete.id = athlete_id JOIN case_state ON case_id = case_record.id
       ${ON_SHELF} ORDER BY touched_at DESC, number DESC LIMIT :limit OFFSET :offset`,
    ),
    match: prepare<[string, number], { marked: string }>(
      `SELECT snippet(search, 0, '⟦', '⟧', '…', 12) AS marked FROM search WHERE search MATCH ? AND rowid = ?`,
    ),
  };
}

export type Statements = ReturnType<typeof prepareStatements>;
