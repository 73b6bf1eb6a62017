import { spawn } from 'node:child_process';
import { once } from 'node:events';
import fs from 'node:fs';
import path from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { describe, expect, test } from 'vitest';
import { randomSource } from '../../../main/demo/randomSource.ts';
import { openDatabase } from '../../../main/store/database.ts';
import { migrate, readMigrations, schemaVersion } from '../../../main/store/migrate.ts';
import { DATABASE_FILE, openSqliteCaseStore } from '../../../main/store/sqliteCaseStore.ts';
import { AT, EXAMPLES, WHOLE_CASE } from '../../conformance/examples.ts';
import { aFolder, HOLDER } from './aFolder.ts';
import { CASE, type Mover, openMover } from './moves.ts';

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
    database.pragma('user_version = 1000');
    database.close();
    const before = fs.readFileSync(databaseOf(folder));
    expectRefusal(folder, 'store-newer');
    expect(fs.readFileSync(databaseOf(folder)).equals(before)).toBe(true);
  });

  test('a migration that fails leaves all cases as they were, and the folder free', async () => {
    const folder = await aStore();
    const shipped = readMigrations(path.resolve(import.meta.dirname, '../../../migrations'));
    const failing = { name: '9999_fails.sql', sql: 'DELETE FROM search; ALTER TABLE athlete DROP COLUMN nothing;' };
    expect(() => openSqliteCaseStore(folder, HOLDER, [...shipped, failing])).toThrow(
      expect.objectContaining({ code: 'internal', message: expect.stringContaining('9999_fails.sql') }),
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

  // The one folder of a machine that root cannot write to either.
  test.runIf(process.platform === 'linux')('a folder the system does not let anybody write cannot be written', () => {
    expectRefusal('/proc/caseframe', 'store-unwritable');
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

  test('law: after any one bit of the file flipped, the store is refused, or reads as it was, or verify notices', async () => {
    const folder = await aStore();
    const whole = fs.readFileSync(databaseOf(folder));
    let store = openSqliteCaseStore(folder, HOLDER);
    const before = await store.open(EXAMPLES.case.id);
    await store.close();
    const random = randomSource(5);
    for (let flip = 0; flip < 400; flip++) {
      const bytes = Buffer.from(whole);
      const at = Math.floor(bytes.length * random.uniform());
      bytes[at] = (bytes[at] as number) ^ (1 << Math.floor(8 * random.uniform()));
      for (const file of fs.readdirSync(folder)) fs.rmSync(path.join(folder, file));
      fs.writeFileSync(databaseOf(folder), bytes);
      const told = (thrown: unknown) => {
        expect({ at, thrown }).toMatchObject({
          // A flip in the id of the case itself leaves none of that id.
          thrown: { name: 'DomainError', code: expect.stringMatching(/^(store-|not-found$)/) },
        });
        return null;
      };
      try {
        store = openSqliteCaseStore(folder, HOLDER);
      } catch (thrown) {
        told(thrown);
        continue;
      }
      const read = await store.open(EXAMPLES.case.id).catch(told);
      const problems = await store.verify().catch(told);
      if (!isDeepStrictEqual(read, before)) expect({ at, problems }).not.toEqual({ at, problems: [] });
      await store.close();
    }
  });

  test('a layout that lost a column is refused', async () => {
    const folder = await aStore();
    const database = openDatabase(databaseOf(folder));
    database.exec('ALTER TABLE injury DROP COLUMN mechanism');
    database.close();
    expectRefusal(folder, 'store-corrupt');
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

  test('another process is refused while this one has the folder, and told who has it', async () => {
    const folder = aFolder();
    const store = openSqliteCaseStore(folder, HOLDER);
    const child = spawn(process.execPath, [path.join(import.meta.dirname, 'keepsWorking.ts'), folder]);
    let said = '';
    child.stderr.setEncoding('utf8').on('data', (text: string) => (said += text));
    const [code] = await once(child, 'close');
    expect(code).toBe(1);
    expect(said).toContain(`is already open (test, process ${process.pid}, since ${HOLDER.since})`);
    await store.close();
  });

  test('this process is refused while another one lives, and its kill -9 frees the folder at once', async () => {
    const folder = await aStore();
    const child = spawn(process.execPath, [path.join(import.meta.dirname, 'keepsWorking.ts'), folder]);
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

  test('is held and given back where the note of who has it cannot be written', async () => {
    const folder = aFolder();
    fs.mkdirSync(path.join(folder, 'open-in.json'));
    const store = openSqliteCaseStore(folder, HOLDER);
    expect(() => openSqliteCaseStore(folder, HOLDER)).toThrow(expect.objectContaining({ code: 'store-locked' }));
    await store.close();
    await openSqliteCaseStore(folder, HOLDER).close();
  });

  test('closing twice leaves the next holder its folder and its note', async () => {
    const folder = aFolder();
    const first = openSqliteCaseStore(folder, HOLDER);
    await first.close();
    const next = openSqliteCaseStore(folder, { ...HOLDER, host: 'next' });
    await first.close();
    expect(() => openSqliteCaseStore(folder, HOLDER)).toThrow(
      expect.objectContaining({ code: 'store-locked', message: expect.stringContaining('next, process') }),
    );
    await next.close();
  });

  test('what an earlier program left lying there does not hold the folder', async () => {
    const folder = aFolder();
    fs.writeFileSync(path.join(folder, 'open-in.json'), 'half a no');
    await openSqliteCaseStore(folder, HOLDER).close();
    expect(fs.readdirSync(folder).toSorted((a, b) => (a < b ? -1 : 1))).toEqual(['cases.sqlite', 'lock.sqlite']);
  });
});

const opened = ({ service }: Mover) => service.dispatch('case.open', { caseId: CASE });

describe('a disk that is full', () => {
  // A limit on the size of a file is the nearest that every POSIX shell can do: writing beyond it fails in the same place.
  test.skipIf(process.platform === 'win32')(
    'stops the work with a sentence; what was acknowledged before is there',
    async () => {
      const folder = aFolder();
      const script = path.join(import.meta.dirname, 'keepsWorking.ts');
      const limited = `trap '' XFSZ; ulimit -f 3000; exec "$0" "$1" "$2"`;
      const child = spawn('sh', ['-c', limited, process.execPath, script, folder]);
      let [printed, said] = ['', ''];
      child.stdout.setEncoding('utf8').on('data', (text: string) => (printed += text));
      child.stderr.setEncoding('utf8').on('data', (text: string) => (said += text));
      await once(child, 'close');
      expect(said).toMatch(/move \d+: The case store in .+ cannot be written/);
      const acknowledged = Number(printed.split('\n').at(-2));
      expect(acknowledged).toBeGreaterThan(0);
      const [harmed, unharmed] = [await openMover(folder), await openMover(aFolder())];
      for (let n = 0; n <= acknowledged; n++) await unharmed.move(n);
      expect(await opened(harmed)).toEqual(await opened(unharmed));
      expect(await harmed.service.dispatch('store.verify', {})).toEqual({ ok: true, value: { problems: [] } });
      await harmed.service.close();
      await unharmed.service.close();
    },
  );
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
