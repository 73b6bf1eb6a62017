import { beforeAll, afterAll, expect, test } from 'vitest';
import { openSqliteCaseStore, type SqliteCaseStore } from '../../../main/store/sqliteCaseStore.ts';
import type { ShelfQuery, ShelfRow } from '../../../shared/ports/caseStore.ts';
import type { Edit } from '../../../shared/model/edit.ts';
import { after, EXAMPLES, id } from '../../conformance/examples.ts';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';

const ATHLETES = 40;
const CASES = 300;

/** Invented, and what each shelf must show of it; athlete n has the cases n, n + 40, n + 80 and so on. */
const cases = Array.from({ length: CASES }, (_, n) => ({
  caseId: id(1000 + n),
  athlete: n % ATHLETES,
  number: `2026-${String(n + 1).padStart(3, '0')}`,
  question: `question ${['shoulder', 'knee', 'ankle'][n % 3]} ${n}`,
  isArchived: n % 10 === 9,
}));
const nameOf = (athlete: number) => `Quarrystone${String(athlete).padStart(2, '0')} Linden`;

let folder: string;
let store: SqliteCaseStore;
beforeAll(async () => {
  folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-shelf-'));
  store = openSqliteCaseStore(folder, { host: 'test', pid: process.pid, since: '' });
  for (const [n, { caseId, athlete, number, question, isArchived }] of cases.entries()) {
    const athleteId = id(100 + athlete);
    const person = { ...EXAMPLES.athlete, id: athleteId, name: nameOf(athlete), goals: '', note: '' };
    const archivedOn = isArchived ? '2026-11-25' : null;
    const opened = { ...EXAMPLES.case, id: caseId, athleteId, number, question, archivedOn };
    const made: Edit[] = [{ op: 'create', kind: 'case', record: opened }];
    if (n < ATHLETES) made.unshift({ op: 'create', kind: 'athlete', record: person });
    await store.create(made, after(1000 * n));
  }
});
afterAll(async () => {
  await store.close();
  fs.rmSync(folder, { recursive: true });
});

async function page(query: Partial<ShelfQuery>): Promise<{ total: number; rows: ShelfRow[] }> {
  return store.shelf({ search: '', archived: false, offset: 0, limit: 500, ...query });
}

/** The rows of all pages of 7, each page asked for by itself. */
async function paged(query: Partial<ShelfQuery>): Promise<ShelfRow[]> {
  const rows: ShelfRow[] = [];
  for (let offset = 0; ; offset += 7) {
    const one = await page({ ...query, offset, limit: 7 });
    if (one.rows.length === 0) return rows;
    rows.push(...one.rows);
  }
}

/** Numbers of the cases that fit, last touched first: here, last opened first. */
function expected(fits: (one: (typeof cases)[number]) => boolean): string[] {
  return cases
    .filter(fits)
    .map(({ number }) => number)
    .toReversed();
}

const numbers = (rows: readonly ShelfRow[]) => rows.map(({ number }) => number);

test.each([false, true])('every case once, last touched first, whatever the page; archived: %s', async (archived) => {
  const all = expected(({ isArchived }) => isArchived === archived);
  expect(numbers(await paged({ archived }))).toEqual(all);
  expect((await page({ archived, offset: 20, limit: 1 })).total).toBe(all.length);
});

test('a name finds all cases of that athlete and no other, paged or whole', async () => {
  for (let athlete = 0; athlete < ATHLETES; athlete++) {
    const theirs = expected((one) => one.athlete === athlete && !one.isArchived);
    const search = nameOf(athlete).toUpperCase();
    const { total, rows } = await page({ search });
    expect([total, ...numbers(rows)]).toEqual([theirs.length, ...theirs]);
    expect(numbers(await paged({ search }))).toEqual(theirs);
    expect(rows.every(({ match }) => match?.includes('⟦Quarrystone'))).toBe(true);
  }
});

test('words from the athlete and from the case together narrow down to where both stand', async () => {
  const rows = await paged({ search: 'quarrystone04 knee' });
  expect(numbers(rows)).toEqual(
    expected((one) => one.athlete === 4 && one.question.includes('knee') && !one.isArchived),
  );
  expect(rows.length).toBeGreaterThan(0);
});

test('after an edit the case is on top and found by its new words only; all others stay in place', async () => {
  const before = numbers(await paged({}));
  const [moved] = cases;
  const fields = { question: 'periwinkle' };
  await store.apply(moved?.caseId ?? '', [{ op: 'patch', kind: 'case', id: moved?.caseId ?? '', fields }], after(1e6));
  expect(numbers(await paged({}))).toEqual(['2026-001', ...before.filter((number) => number !== '2026-001')]);
  expect(numbers((await page({ search: 'periwink' })).rows)).toEqual(['2026-001']);
  expect((await page({ search: 'quarrystone00 shoulder' })).rows.map(({ caseId }) => caseId)).not.toContain(id(1000));
  await store.undo(moved?.caseId ?? '', after(2e6));
  expect((await page({ search: 'periwink' })).total).toBe(0);
});

test('verify finds nothing, and the next number follows on', async () => {
  expect(await store.verify()).toEqual([]);
  expect(await store.nextNumber(2026)).toBe('2026-301');
});
