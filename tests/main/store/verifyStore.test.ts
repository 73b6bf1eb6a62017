import path from 'node:path';
import { expect, test } from 'vitest';
import { type Database, openDatabase } from '../../../main/store/database.ts';
import { DATABASE_FILE, openSqliteCaseStore } from '../../../main/store/sqliteCaseStore.ts';
import { AT, id, WHOLE_CASE } from '../../conformance/examples.ts';
import { aFolder, HOLDER } from './aFolder.ts';

/** What verify says of the whole example case after something was done to its file behind the store's back. */
async function problemsAfter(tamper: (database: Database) => void): Promise<string[]> {
  const folder = aFolder();
  const store = openSqliteCaseStore(folder, HOLDER);
  await store.create(WHOLE_CASE, AT);
  const database = openDatabase(path.join(folder, DATABASE_FILE));
  database.pragma('foreign_keys = OFF');
  tamper(database);
  database.close();
  const problems = await store.verify();
  await store.close();
  return problems;
}

test('says nothing of a store that was left alone', async () => {
  expect(await problemsAfter(() => {})).toEqual([]);
});

test.each([
  [
    'a value changed',
    'UPDATE jump_trial SET flight_time_s = 0.6',
    [`The history does not lead to the jump ${id(7)} that is stored.`],
  ],
  [
    'a value no schema allows',
    'UPDATE athlete SET mass_kg = 4000',
    [
      `In “massKg” of athlete ${id(1)}: must be at most 400.`,
      `The history does not lead to the athlete ${id(1)} that is stored.`,
    ],
  ],
  [
    'a record deleted',
    'DELETE FROM body_measurement',
    [
      'The search knows records that are gone.',
      `The history leads to the earlier measurement ${id(15)}, which is not stored.`,
    ],
  ],
  [
    'a line of history deleted',
    `DELETE FROM change WHERE kind = 'trialEvent'`,
    [`The history does not lead to the event ${id(10)} that is stored.`],
  ],
  [
    'words missing from the search',
    `UPDATE search SET body = 'x' WHERE body LIKE '%posterior instability%'`,
    [`The search does not know the words of injury ${id(3)}.`],
  ],
  [
    'an owner deleted',
    'DELETE FROM jump_test',
    [
      'A row of jump_trial belongs to a row of jump_test that is gone.',
      'The search knows records that are gone.',
      `The history leads to the jump test ${id(6)}, which is not stored.`,
    ],
  ],
])('finds %s', async (_what, sql, problems) => {
  expect(await problemsAfter((database) => database.exec(sql))).toEqual(problems);
});

test('finds a search index that does not fit its texts', async () => {
  const problems = await problemsAfter((database) => {
    database.unsafeMode(true).exec(`UPDATE search_content SET c0 = 'other words'`);
  });
  expect(problems[0]).toMatch(/^The database file is damaged: .*inverted index.*search\.$/);
});
