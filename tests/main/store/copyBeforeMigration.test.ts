import fs from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { copyBeforeMigration } from '../../../main/store/copyBeforeMigration.ts';
import { openDatabase } from '../../../main/store/database.ts';
import { migrate, readMigrations, schemaVersion } from '../../../main/store/migrate.ts';
import { DATABASE_FILE, openSqliteCaseStore } from '../../../main/store/sqliteCaseStore.ts';
import { aFolder } from './aFolder.ts';

const ALL = readMigrations(path.resolve(import.meta.dirname, '../../../migrations'));
const LATEST = ALL.length;

/** A store as the program of `version` migrations left it. */
function storeOf(version: number): string {
  const folder = aFolder();
  const database = openDatabase(path.join(folder, DATABASE_FILE));
  migrate(database, ALL.slice(0, version));
  database.close();
  return folder;
}

const copies = (folder: string) => fs.readdirSync(folder).filter((name) => name.startsWith('cases-version-'));

test('a store of an older program is copied whole before its layout moves on, for its owner alone', async () => {
  const folder = storeOf(1);
  const store = openSqliteCaseStore(folder, { host: 'test', pid: process.pid, since: '2026-01-01T00:00:00.000Z' }, ALL);
  expect(store.schemaVersion).toBe(LATEST);
  await store.close();
  expect(copies(folder)).toEqual(['cases-version-1.sqlite']);
  const copy = path.join(folder, 'cases-version-1.sqlite');
  expect(fs.statSync(copy).mode & 0o077).toBe(0);
  const opened = openDatabase(copy);
  expect([schemaVersion(opened), opened.pragma('integrity_check', { simple: true })]).toEqual([1, 'ok']);
  opened.close();
});

test('neither a new store nor one that is up to date is copied', async () => {
  const folder = aFolder();
  for (const _ of [1, 2])
    await openSqliteCaseStore(
      folder,
      { host: 'test', pid: process.pid, since: '2026-01-01T00:00:00.000Z' },
      ALL,
    ).close();
  expect(copies(folder)).toEqual([]);
});

test('what a copy cut short left behind is written over', () => {
  const folder = storeOf(2);
  fs.writeFileSync(path.join(folder, 'cases-version-2.sqlite.unfinished'), 'half');
  const database = openDatabase(path.join(folder, DATABASE_FILE));
  expect(copyBeforeMigration(database, folder, LATEST)).toBe(path.join(folder, 'cases-version-2.sqlite'));
  database.close();
  expect(copies(folder)).toEqual(['cases-version-2.sqlite']);
});
