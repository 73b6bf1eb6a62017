import path from 'node:path';
import { describe, expect, test } from 'vitest';
import type { z } from 'zod';
import { openDatabase } from '../../../main/store/database.ts';
import { migrate, readMigrations } from '../../../main/store/migrate.ts';
import { prepareStatements } from '../../../main/store/statements.ts';
import { fromRow, TABLES, toRow } from '../../../main/store/tables.ts';
import { KINDS, RECORDS } from '../../../shared/model/records.ts';
import { EXAMPLES, id } from '../../conformance/examples.ts';

const database = openDatabase(':memory:');
migrate(database, readMigrations(path.resolve(import.meta.dirname, '../../../migrations')));

interface ColumnInfo {
  readonly name: string;
  readonly type: string;
  readonly notnull: number;
}

/** `si`: in the unit that the item or measure it belongs to has; `nrs`: the numeric rating scale of pain, 0 to 10. */
const UNIT_ENDING = /_(kg|m|px|s|hz|rad|days|hours|years|bytes|points|ratio|nrs|si)$/;
/** How many, or which one; `place` orders the rows. */
const COUNTS = ['place', 'frame', 'episodes', 'number', 'page_count', 'weekly_sessions'];

test('every statement of the store can be prepared on a migrated database', () => {
  expect(Object.keys(prepareStatements(database).records)).toEqual(KINDS);
});

describe.each(KINDS)('%s', (kind) => {
  const table = TABLES[kind];
  const columns = database.pragma(`table_info(${table.name})`) as readonly ColumnInfo[];

  test('its table has exactly the columns of its schema, and its place', () => {
    expect(columns.map((column) => column.name)).toEqual(['place', ...table.columns.map((column) => column.name)]);
  });

  test('a column may be empty exactly where the schema allows null', () => {
    const optional = columns.filter((column) => column.notnull === 0 && column.name !== 'place');
    const shape: Readonly<Record<string, z.ZodType>> = RECORDS[kind].schema.shape;
    const nullable = table.columns.filter(({ field }) => shape[field]?.safeParse(null).success);
    expect(optional.map((column) => column.name)).toEqual(nullable.map((column) => column.name));
  });

  test('a number that measures something ends in its unit', () => {
    const shape: Readonly<Record<string, z.ZodType>> = RECORDS[kind].schema.shape;
    const yesOrNo = table.columns.filter(({ field }) => shape[field]?.safeParse(true).success).map(({ name }) => name);
    const numbers = columns.filter(({ type }) => type === 'REAL' || type === 'INTEGER').map(({ name }) => name);
    const measured = numbers.filter((name) => ![...COUNTS, ...yesOrNo].includes(name));
    expect(measured.filter((name) => !UNIT_ENDING.test(name))).toEqual([]);
  });

  test('a record goes through its row and back unchanged', () => {
    expect(fromRow(table, toRow(table, EXAMPLES[kind]))).toEqual(EXAMPLES[kind]);
  });
});

test('every table is strict: a word is no number', () => {
  const listed = database.pragma('table_list') as readonly { name: string; type: string; strict: number }[];
  const lax = listed.filter(
    ({ name, type, strict }) => type === 'table' && strict === 0 && !name.startsWith('sqlite_'),
  );
  expect(lax).toEqual([]);
});

test('a case is found by its indexes, never by reading a whole table', () => {
  for (const kind of KINDS) {
    const { source } = prepareStatements(database).records[kind].ofCase;
    const plan = database.prepare(`EXPLAIN QUERY PLAN ${source}`).all({ caseId: id(2) }) as { detail: string }[];
    expect(plan.filter(({ detail }) => detail.startsWith('SCAN'))).toEqual([]);
  }
});
