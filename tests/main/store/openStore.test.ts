import { spawn } from 'node:child_process';
import { once } from 'node:events';
import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { openDatabase } from '../../../main/store/database.ts';
import { migrate, readMigrations, schemaVersion } from '../../../main/store/migrate.ts';
import { DATABASE_FILE, openSqliteCaseStore } from '../../../main/store/sqliteCaseStore.ts';
import { AT, EXAMPLES, WHOLE_CASE } from '../../conformance/examples.ts';
import { aFolder, HOLDER } from './aFolder.ts';

/** Expects a refusal: its code, and a sentence long enough to say what to do, that names the folder. */
function expectRefusal(folder: string, code: string): void {
  const refusal = { name: 'DomainError', code, message: expect.stringMatching(/^[A-Z].{60,}\.$/s) };
  expect(() => openSqliteCaseStore(folder, HOLDER)).toThrow(expect.objectContaining(refusal));
  expect(() => openSqliteCaseStore(folder, HOLDER)).toThrow(folder);
}

async function aStore(): Promise<string> {
  const folder = aFolder();
  const store = openSqliteCaseStore(folder, HOLDER);
  await store.create(WHOLE_CASE, AT);
  await store.close();
  return folder;
}

const databaseOf = (folder: string) => path.join(folder, DATABASE_FILE);

describe('opening a store folder', () => {
  test('makes the folder, its parents too, for its owner alone', async () => {
    const folder = path.join(aFolder(), 'a', 'b');
    await openSqliteCaseStore(folder, HOLDER).close();
    expect(fs.existsSync(databaseOf(folder))).toBe(true);
    if (process.platform !== 'win32') expect(fs.statSync(folder).mode & 0o777).toBe(0o700);
  });

  test('runs with the settings that keep a commit through a power cut', async () => {
    const folder = await aStore();
    const database = openDatabase(databaseOf(folder));
    expect(database.pragma('journal_mode', { simple: true })).toBe('wal');
    database.close();
  });

  test('a newer store is refused, byte for byte as it was', async () => {
    const folder = await aStore();
    const database = openDatabase(databaseOf(folder));
    database.pragma('user_version = 3');
    database.close();
    const before = fs.readFileSync(databaseOf(folder));
    expectRefusal(folder, 'store-newer');
    expect(fs.readFileSync(databaseOf(folder)).equals(before)).toBe(true);
  });

  test('a migration that fails leaves all cases as they were, and the folder free', async () => {
    const folder = await aStore();
    const shipped = readMigrations(path.resolve(import.meta.dirname, '../../../migrations'));
    const failing = { name: '0002_fails.sql', sql: 'DELETE FROM search; ALTER TABLE athlete DROP COLUMN nothing;' };
    expect(() => openSqliteCaseStore(folder, HOLDER, [...shipped, failing])).toThrow(
      expect.objectContaining({ code: 'internal', message: expect.stringContaining('0002_fails.sql') }),
    );
    const store = openSqliteCaseStore(folder, HOLDER);
    expect([store.schemaVersion, await store.verify()]).toEqual([shipped.length, []]);
    expect((await store.open(EXAMPLES.case.id)).athlete).toEqual(EXAMPLES.athlete);
    await store.close();
  });

  test('a file in place of the folder cannot be written', () => {
    const file = path.join(aFolder(), 'file');
    fs.writeFileSync(file, '');
    for (const folder of [file, path.join(file, 'below')]) {
      expectRefusal(folder, 'store-unwritable');
    }
  });

  test.skipIf(process.getuid === undefined || process.getuid() === 0)(
    'a folder without the permission to write cannot be written (not for root, who may write anywhere)',
    () => {
      const folder = aFolder();
      fs.chmodSync(folder, 0o500);
      expectRefusal(folder, 'store-unwritable');
      fs.chmodSync(folder, 0o700);
    },
  );

  test('a database that cannot be opened cannot be written', async () => {
    const folder = await aStore();
    fs.rmSync(databaseOf(folder));
    fs.mkdirSync(databaseOf(folder));
    expectRefusal(folder, 'store-unwritable');
  });

  test.each([
    ['is no database', (bytes: Buffer) => Buffer.from('What is this file?'.repeat(bytes.length / 18))],
    ['was cut off', (bytes: Buffer) => bytes.subarray(0, Math.floor(bytes.length / 3))],
    [
      'has a page of noise',
      (bytes: Buffer) => Buffer.concat([bytes.subarray(0, 4096), Buffer.alloc(8192, 0xa5), bytes.subarray(12_288)]),
    ],
  ])('a file that %s is refused and left as it is', async (_what, damage) => {
    const folder = await aStore();
    const damaged = damage(fs.readFileSync(databaseOf(folder)));
    fs.writeFileSync(databaseOf(folder), damaged);
    expectRefusal(folder, 'store-corrupt');
    expect(fs.readFileSync(databaseOf(folder)).equals(damaged)).toBe(true);
  });

  test('an empty file is an empty store', async () => {
    const folder = aFolder();
    fs.writeFileSync(databaseOf(folder), '');
    const store = openSqliteCaseStore(folder, HOLDER);
    expect(await store.verify()).toEqual([]);
    await store.close();
  });
});

describe('the lock', () => {
  test('a second opener in this program is refused and told who has it', async () => {
    const folder = aFolder();
    const store = openSqliteCaseStore(folder, HOLDER);
    const other = () => openSqliteCaseStore(folder, { ...HOLDER, host: 'other' });
    for (const opener of [other, other]) {
      expect(opener).toThrow(
        expect.objectContaining({
          code: 'store-locked',
          message: expect.stringContaining(`test, process ${process.pid}`),
        }),
      );
    }
    await store.create(WHOLE_CASE, AT);
    await store.close();
    await openSqliteCaseStore(folder, HOLDER).close();
  });

  test('another process is refused while this one lives, and its kill -9 frees the folder at once', async () => {
    const folder = await aStore();
    const child = spawn(process.execPath, [path.join(import.meta.dirname, 'keepsTyping.ts'), folder]);
    const closed = once(child, 'exit');
    await once(child.stdout, 'data');
    expect(() => openSqliteCaseStore(folder, HOLDER)).toThrow(
      expect.objectContaining({ code: 'store-locked', message: expect.stringContaining(`process ${child.pid}`) }),
    );
    child.kill('SIGKILL');
    await closed;
    const store = openSqliteCaseStore(folder, HOLDER);
    expect(await store.verify()).toEqual([]);
    await store.close();
  });

  test('what an earlier program left lying there does not hold the folder', async () => {
    const folder = aFolder();
    fs.writeFileSync(path.join(folder, 'open-in.json'), 'half a no');
    await openSqliteCaseStore(folder, HOLDER).close();
    expect(fs.readdirSync(folder).toSorted((a, b) => (a < b ? -1 : 1))).toEqual(['cases.sqlite', 'lock.sqlite']);
  });
});

function layout(file: string): unknown[] {
  const database = openDatabase(file);
  if (schemaVersion(database) === 0) {
    migrate(database, readMigrations(path.resolve(import.meta.dirname, '../../../migrations')));
  }
  const rows = database.prepare('SELECT sql FROM sqlite_schema ORDER BY name').pluck().all();
  database.close();
  return rows;
}

test('migrating an empty database and opening a new store give the same layout', async () => {
  const folder = await aStore();
  expect(layout(databaseOf(folder))).toEqual(layout(':memory:'));
});
