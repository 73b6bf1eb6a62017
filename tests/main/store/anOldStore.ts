import path from 'node:path';
import { type Database, openDatabase } from '../../../main/store/database.ts';
import { migrate, readMigrations } from '../../../main/store/migrate.ts';
import { DATABASE_FILE } from '../../../main/store/sqliteCaseStore.ts';
import { type Row, TABLES, toRow } from '../../../main/store/tables.ts';
import type { AnyRecord, Kind } from '../../../shared/model/records.ts';
import { searchText } from '../../../shared/ports/searchText.ts';
import { AT, EXAMPLES } from '../../conformance/examples.ts';
import { aFolder } from './aFolder.ts';

export const MIGRATIONS = readMigrations(path.resolve(import.meta.dirname, '../../../migrations'));

/**
 * A store with one case as the program of `version` migrations left it: of each record only the fields that layout knows,
 * in table and history; kinds it does not know are left out. `removed` was taken out again in a second step.
 */
export function anOldStore(version: number, kinds: readonly Kind[], removed: Kind | null): string {
  const folder = aFolder();
  const database = openDatabase(path.join(folder, DATABASE_FILE));
  migrate(database, MIGRATIONS.slice(0, version));
  const caseId = EXAMPLES.case.id;
  database.transaction(() => {
    insert(database, 'edit_step', {
      case_id: caseId,
      step: 1,
      at: AT,
      label: 'case opened',
      state: 'done',
      is_undoable: 0,
    });
    for (const kind of kinds) {
      const fields = knownFields(database, kind);
      const change = { case_id: caseId, step: 1, kind, record_id: EXAMPLES[kind].id, op: 'create', before: null };
      const place = insert(database, 'change', { ...change, after: JSON.stringify(fields) });
      if (kind === removed) continue;
      const known = columnsOf(database, TABLES[kind].name);
      const row = Object.entries(toRow(TABLES[kind], EXAMPLES[kind])).filter(([name]) => known.has(name));
      insert(database, TABLES[kind].name, { ...Object.fromEntries(row), place });
      const isOfAthlete = kind === 'athlete' || kind === 'injury';
      const owner = isOfAthlete ? { athlete_id: EXAMPLES.athlete.id } : { case_id: caseId };
      insert(database, 'search', { rowid: place, body: searchText(fields as AnyRecord), ...owner });
    }
    insert(database, 'case_state', { case_id: caseId, revision: 1, touched_at: AT, missing: '[]', cautions: '[]' });
    if (removed !== null) {
      insert(database, 'edit_step', {
        case_id: caseId,
        step: 2,
        at: AT,
        label: 'removed',
        state: 'done',
        is_undoable: 1,
      });
      const before = JSON.stringify(knownFields(database, removed));
      const change = { case_id: caseId, step: 2, kind: removed, record_id: EXAMPLES[removed].id, op: 'remove' };
      insert(database, 'change', { ...change, before, after: null });
    }
  })();
  database.close();
  return folder;
}

function columnsOf(database: Database, table: string): ReadonlySet<string> {
  return new Set((database.pragma(`table_info(${table})`) as { name: string }[]).map(({ name }) => name));
}

function knownFields(database: Database, kind: Kind): object {
  const known = columnsOf(database, TABLES[kind].name);
  const example: Readonly<Record<string, unknown>> = EXAMPLES[kind];
  const columns = TABLES[kind].columns.filter(({ name }) => known.has(name));
  return Object.fromEntries(columns.map(({ field }) => [field, example[field]]));
}

function insert(database: Database, table: string, row: Row): number {
  const names = Object.keys(row);
  const sql = `INSERT INTO ${table} (${names.join(', ')}) VALUES (${names.map((name) => `:${name}`).join(', ')})`;
  return Number(database.prepare(sql).run(row).lastInsertRowid);
}
