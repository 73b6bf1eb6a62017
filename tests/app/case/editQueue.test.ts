import { expect, test } from 'vitest';
import { createEditQueue } from '../../../app/case/editQueue.ts';
import type { Failure, Result } from '../../../shared/errors.ts';
import type { Edit } from '../../../shared/model/edit.ts';
import type { EditState } from '../../../shared/ports/caseStore.ts';

const CASE = 'a case';
const named = (name: string): Edit => ({ op: 'patch', kind: 'athlete', id: 'an athlete', fields: { name } });
const sport = (words: string): Edit => ({ op: 'patch', kind: 'athlete', id: 'an athlete', fields: { sport: words } });
const failure = (code: Failure['code']): Failure => ({ code, message: 'No.', path: null });

/** A store that answers when told to, so that a test decides what is on its way. */
function slowStore() {
  const asked: { edits: readonly Edit[]; continues: boolean; answer: (result: Result<EditState>) => void }[] = [];
  const heard: Result<EditState>[] = [];
  const queue = createEditQueue(
    (_caseId, edits, continues) => new Promise((resolve) => asked.push({ edits, continues, answer: resolve })),
  );
  queue.onAnswer((_caseId, result) => heard.push(result));
  const answer = async (result: Result<EditState>) => {
    asked.at(-1)?.answer(result);
    await new Promise((resolve) => setTimeout(resolve));
  };
  let revision = 0;
  const store = () => answer({ ok: true, value: { revision: (revision += 1), undo: null, redo: null } });
  const refuse = (code: Failure['code']) => answer({ ok: false, error: failure(code) });
  return { queue, asked, heard, store, refuse };
}

test('law: edits reach the store one at a time, in the order made', async () => {
  const { queue, asked, store } = slowStore();
  queue.push(CASE, [named('A')]);
  queue.push(CASE, [sport('handball')]);
  queue.push(CASE, [named('AB')]);
  expect(asked).toHaveLength(1);
  for (let i = 0; i < 3; i += 1) await store();
  expect(asked.map(({ edits }) => edits[0])).toEqual([named('A'), sport('handball'), named('AB')]);
  expect(await queue.settled()).toBe(true);
});

test('typing ahead of a slow store leaves one request waiting, with the last text', async () => {
  const { queue, asked, store } = slowStore();
  for (const text of ['K', 'Ke', 'Kes', 'Kest']) queue.push(CASE, [named(text)]);
  expect(queue.getState().waiting).toBe(2);
  await store();
  await store();
  expect(asked.map(({ edits }) => edits[0])).toEqual([named('K'), named('Kest')]);
});

test('work stored in parts: a part that takes the place of one still waiting begins where that began; what is no part takes no part’s place', async () => {
  const { queue, asked, store } = slowStore();
  queue.push(CASE, [sport('handball')]);
  queue.push(CASE, [named('A')]);
  queue.push(CASE, [named('AB')], true);
  await store();
  queue.push(CASE, [named('ABC')], true);
  queue.push(CASE, [named('ABCD')], true);
  queue.push(CASE, [named('Z')]);
  for (let i = 0; i < 3; i += 1) await store();
  expect(asked.map(({ edits, continues }) => [edits[0], continues])).toEqual([
    [sport('handball'), false],
    [named('AB'), false],
    [named('ABCD'), true],
    [named('Z'), false],
  ]);
});

test('a refused edit is dropped and reported; those after it still go', async () => {
  const { queue, asked, heard, store, refuse } = slowStore();
  queue.push(CASE, [named('A')]);
  queue.push(CASE, [sport('handball')]);
  await refuse('conflict');
  await store();
  expect(asked).toHaveLength(2);
  expect(heard.map(({ ok }) => ok)).toEqual([false, true]);
  expect(queue.getState()).toEqual({ waiting: 0, failure: failure('conflict'), canRetry: false });
  queue.dismiss();
  expect(queue.getState().failure).toBeNull();
});

test('a store out of reach loses nothing: everything waits for a retry', async () => {
  const { queue, asked, heard, store, refuse } = slowStore();
  queue.push(CASE, [named('A')]);
  await refuse('store-unwritable');
  queue.push(CASE, [sport('handball')]);
  expect(asked).toHaveLength(1);
  expect(queue.getState()).toEqual({ waiting: 2, failure: failure('store-unwritable'), canRetry: true });
  expect(await queue.settled()).toBe(false);
  queue.dismiss();
  expect(queue.getState().canRetry).toBe(true);

  queue.retry();
  await store();
  await store();
  expect(asked.map(({ edits }) => edits[0])).toEqual([named('A'), named('A'), sport('handball')]);
  expect(heard).toHaveLength(2);
  expect(queue.getState()).toEqual({ waiting: 0, failure: null, canRetry: false });
});
