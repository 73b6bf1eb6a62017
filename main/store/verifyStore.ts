import type { z } from 'zod';
import { canonicalJson } from '../../shared/canonicalJson.ts';
import { toFailure } from '../../shared/errors.ts';
import { parseInput } from '../../shared/model/parseInput.ts';
import { type Kind, KINDS, RECORDS } from '../../shared/model/records.ts';
import { KIND_WORDS } from '../../shared/model/words.ts';
import { searchText } from '../../shared/ports/searchText.ts';
import type { Database } from './database.ts';
import type { Statements } from './statements.ts';
import { fromRow, type Row, stepChange, TABLES } from './tables.ts';

/** Everything wrong with a store, in words: the file, every record, the search index, and the history against the records. */
export function verifyStore(database: Database, sql: Statements): string[] {
  const records = KINDS.flatMap((kind) => sql.records[kind].all.all().map((row) => ({ kind, row })));
  return [
    ...fileProblems(database),
    ...recordProblems(records),
    ...searchProblems(sql, records),
    ...historyProblems(sql, records),
  ];
}

type Stored = readonly { readonly kind: Kind; readonly row: Row }[];

function nameOf(kind: Kind, id: unknown): string {
  return `${KIND_WORDS[kind]} ${String(id)}`;
}

/** The integrity check also holds the search index against its texts. */
function fileProblems(database: Database): string[] {
  const damage = (database.pragma('integrity_check') as readonly { integrity_check: string }[])
    .map((row) => row.integrity_check)
    .filter((said) => said !== 'ok');
  const orphans = database.pragma('foreign_key_check') as readonly { table: string; parent: string }[];
  return [
    ...damage.map((said) => `The database file is damaged: ${said}.`),
    ...orphans.map(({ table, parent }) => `A row of ${table} belongs to a row of ${parent} that is gone.`),
  ];
}

function recordProblems(records: Stored): string[] {
  return records.flatMap(({ kind, row }) => {
    const schema: z.ZodType = RECORDS[kind].schema;
    try {
      parseInput(schema, fromRow(TABLES[kind], row), nameOf(kind, row['id']));
      return [];
    } catch (thrown) {
      return [toFailure(thrown).message];
    }
  });
}

function searchProblems(sql: Statements, records: Stored): string[] {
  const indexed = new Map(sql.indexed.all().map(({ place, body }) => [place, body]));
  const missing = records.filter(
    ({ kind, row }) => indexed.get(Number(row['place'])) !== searchText(fromRow(TABLES[kind], row)),
  );
  return [
    ...missing.map(({ kind, row }) => `The search does not know the words of ${nameOf(kind, row['id'])}.`),
    ...(indexed.size > records.length ? ['The search knows records that are gone.'] : []),
  ];
}

/** Replays every change in force from nothing; the outcome must be what is stored. */
function historyProblems(sql: Statements, records: Stored): string[] {
  const replayed = new Map<string, object>();
  for (const change of sql.changesInForce.all().map(stepChange)) {
    const name = nameOf(change.kind, change.recordId);
    if (change.after === null) replayed.delete(name);
    else replayed.set(name, { ...replayed.get(name), ...change.after });
  }
  const differing = records.filter(({ kind, row }) => {
    const name = nameOf(kind, row['id']);
    const isSame = canonicalJson(replayed.get(name)) === canonicalJson(fromRow(TABLES[kind], row));
    replayed.delete(name);
    return !isSame;
  });
  return [
    ...differing.map(({ kind, row }) => `The history does not lead to the ${nameOf(kind, row['id'])} that is stored.`),
    ...[...replayed.keys()].map((name) => `The history leads to the ${name}, which is not stored.`),
  ];
}
