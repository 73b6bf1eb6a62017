import fs from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { type Database, openDatabase } from '../../../main/store/database.ts';
import { migrate, readMigrations, refuseNewer, schemaVersion } from '../../../main/store/migrate.ts';
import { aFolder } from './aFolder.ts';

const ONE = {
  name: '0001_one.sql',
  sql: 'CREATE TABLE one (id INTEGER PRIMARY KEY) STRICT; INSERT INTO one VALUES (1);',
};
const TWO = {
  name: '0002_two.sql',
  sql: 'CREATE TABLE two (id INTEGER PRIMARY KEY, one INTEGER REFERENCES one (id)) STRICT;',
};

function tables(database: Database): unknown[] {
  return database.prepare(`SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name`).pluck().all();
}

function numbered(...names: string[]): string {
  const folder = aFolder();
  for (const name of names) fs.writeFileSync(path.join(folder, name), '');
  return folder;
}

test('runs each migration once, in order, and ends at the number of the last', () => {
  const database = openDatabase(':memory:');
  migrate(database, [ONE]);
  migrate(database, [ONE, TWO]);
  expect([schemaVersion(database), tables(database)]).toEqual([2, ['one', 'two']]);
});

test.each([
  ['a mistake half way', 'CREATE TABLE three (id INTEGER) STRICT; DROP TABLE one; CREATE TABLE oops (;'],
  ['an owner that is gone', 'INSERT INTO two VALUES (1, 99);'],
])('one that fails by %s leaves the database as the one before it left it', (_how, sql) => {
  const file = path.join(aFolder(), 'a.sqlite');
  const database = openDatabase(file);
  expect(() => migrate(database, [ONE, TWO, { name: '0003_three.sql', sql }])).toThrow();
  expect(database.pragma('foreign_keys', { simple: true })).toBe(1);
  database.close();
  const again = openDatabase(file);
  expect([schemaVersion(again), tables(again)]).toEqual([2, ['one', 'two']]);
  expect(again.prepare('SELECT count(*) FROM one').pluck().get()).toBe(1);
  again.close();
});

test('a newer database is refused and left as it is', () => {
  const database = openDatabase(':memory:');
  migrate(database, [ONE, TWO]);
  expect(() => refuseNewer(database, [ONE], '/a/folder')).toThrow(
    expect.objectContaining({ code: 'store-newer', message: expect.stringContaining('/a/folder') }),
  );
  expect(schemaVersion(database)).toBe(2);
});

test.each([
  ['a gap', ['0001_a.sql', '0003_c.sql']],
  ['two of one number', ['0001_a.sql', '0001_b.sql']],
  ['a start above 1', ['0002_b.sql']],
  ['another kind of name', ['0001_a.sql', 'notes.txt']],
])('a folder of migrations with %s is refused', (_what, names) => {
  expect(() => readMigrations(numbered(...names))).toThrow(expect.objectContaining({ code: 'internal' }));
});

test('the migrations shipped are numbered without a gap', () => {
  const shipped = readMigrations(path.resolve(import.meta.dirname, '../../../migrations'));
  expect(shipped[0]?.name).toBe('0001_create_case_store.sql');
});
