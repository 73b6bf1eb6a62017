import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { openSqliteCaseStore } from '../../main/store/sqliteCaseStore.ts';
import type { Edit } from '../../shared/model/edit.ts';
import type { CaseStore } from '../../shared/ports/caseStore.ts';
import { inMemoryCaseStore } from '../../shared/ports/inMemoryCaseStore.ts';
import { AT, after, creating, EXAMPLES, id } from './examples.ts';

/** Two cases of one athlete; what is done to either may touch the athlete they share. */
const CASES = [EXAMPLES.case.id, id(102)] as const;

const small = fc.nat(3);
const anyEdit: fc.Arbitrary<Edit> = fc.oneof(
  small.map((n): Edit => ({ op: 'patch', kind: 'athlete', id: id(1), fields: { goals: `goal ${n}` } })),
  small.map((n): Edit => ({ op: 'create', kind: 'injury', record: { ...EXAMPLES.injury, id: id(30 + n) } })),
  fc
    .tuple(small, small)
    .map(([n, m]): Edit => ({ op: 'patch', kind: 'injury', id: id(30 + n), fields: { note: `note ${m}` } })),
  small.map((n): Edit => ({ op: 'remove', kind: 'injury', id: id(30 + n) })),
  fc.tuple(small, fc.constantFrom(...CASES)).map(
    ([n, caseId]): Edit => ({
      op: 'create',
      kind: 'jumpTest',
      record: { ...EXAMPLES.jumpTest, id: id(40 + n), caseId },
    }),
  ),
  fc.tuple(small, small).map(
    ([n, m]): Edit => ({
      op: 'create',
      kind: 'jumpTrial',
      record: { ...EXAMPLES.jumpTrial, id: id(50 + n), testId: id(40 + m) },
    }),
  ),
  small.map((n): Edit => ({ op: 'remove', kind: 'jumpTest', id: id(40 + n) })),
  fc
    .tuple(small, fc.constantFrom(...CASES))
    .map(
      ([n, caseId]): Edit => ({ op: 'create', kind: 'media', record: { ...EXAMPLES.media, id: id(60 + n), caseId } }),
    ),
  fc
    .tuple(small, fc.constantFrom(...CASES))
    .map(
      ([n, caseId]): Edit => ({ op: 'create', kind: 'report', record: { ...EXAMPLES.report, id: id(70 + n), caseId } }),
    ),
);

const anyMove = fc.record({
  caseId: fc.constantFrom(...CASES),
  pauseMs: fc.constantFrom(100, 5000),
  continues: fc.boolean(),
  what: fc.oneof(
    { weight: 4, arbitrary: fc.array(anyEdit, { minLength: 1, maxLength: 3 }) },
    { weight: 2, arbitrary: fc.constant('undo' as const) },
    { weight: 1, arbitrary: fc.constant('redo' as const) },
  ),
});

/** What a store answers: a state, or the code of its refusal. */
async function move(
  store: CaseStore,
  caseId: string,
  what: readonly Edit[] | 'undo' | 'redo',
  at: string,
  continues = false,
) {
  try {
    return await (typeof what === 'string' ? store[what](caseId, at) : store.apply(caseId, what, at, continues));
  } catch (thrown) {
    return (thrown as { code: string }).code;
  }
}

test('law: whatever is done, both stores answer alike, hold the same, and their history leads to what they hold', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(anyMove, { maxLength: 25 }), async (moves) => {
      const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-twins-'));
      const stores = [inMemoryCaseStore(), openSqliteCaseStore(folder, { host: 'test', pid: 0, since: '' })] as const;
      try {
        for (const store of stores) {
          await store.create(creating(['athlete', 'case']), AT);
          const record = { ...EXAMPLES.case, id: CASES[1], number: '2026-002' };
          await store.create([{ op: 'create', kind: 'case', record }], AT);
        }
        const [twin, sqlite] = stores;
        let at = 0;
        for (const { caseId, pauseMs, what, continues } of moves) {
          at += pauseMs;
          const answers = [];
          for (const store of [sqlite, twin]) answers.push(await move(store, caseId, what, after(at), continues));
          expect(answers[0]).toEqual(answers[1]);
        }
        for (const caseId of CASES) {
          expect(await sqlite.open(caseId)).toEqual(await twin.open(caseId));
          expect(await sqlite.history(caseId, 1000)).toEqual(await twin.history(caseId, 1000));
          expect(await sqlite.lastEditAt(caseId)).toBe(await twin.lastEditAt(caseId));
        }
        expect(await sqlite.verify()).toEqual([]);
      } finally {
        await stores[1].close();
        fs.rmSync(folder, { recursive: true });
      }
    }),
    { numRuns: 60 },
  );
}, 120_000);

test('law: undoing everything gives the case as it was opened, but for what is kept; redoing everything, as it was left', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(fc.array(anyEdit, { minLength: 1, maxLength: 3 }), { maxLength: 20 }), async (steps) => {
      const store = inMemoryCaseStore();
      await store.create(creating(['athlete', 'case']), AT);
      const contents = async () => {
        const { revision: _revision, reports: _reports, media: _media, ...rest } = await store.open(CASES[0]);
        return rest;
      };
      const opened = await contents();
      for (const [i, edits] of steps.entries()) await move(store, CASES[0], edits, after(5000 * i), i % 2 === 0);
      const left = await contents();
      while ((await store.editState(CASES[0])).undo !== null) await store.undo(CASES[0], after(0));
      expect(await contents()).toEqual(opened);
      while ((await store.editState(CASES[0])).redo !== null) await store.redo(CASES[0], after(0));
      expect(await contents()).toEqual(left);
    }),
    { numRuns: 200 },
  );
}, 60_000);
