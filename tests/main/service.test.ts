import fs from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { CHANNEL_NAMES, type EventPayload } from '../../shared/contract/channels.ts';
import type { Edit } from '../../shared/model/edit.ts';
import { openSqliteCaseStore } from '../../main/store/sqliteCaseStore.ts';
import { after, EXAMPLES, id } from '../conformance/examples.ts';
import { type Asked, aService, TODAY } from './handlers/aService.ts';

let made: Asked;
beforeEach(async () => {
  made = await aService();
});
afterEach(() => made.dispose());

const SHIPPED = fs.readdirSync(path.resolve(import.meta.dirname, '../../migrations')).length;

const everything = { search: '', archived: false, offset: 0, limit: 100 };

async function newCase(athleteId: string | null = null) {
  const { caseId } = await made.ask('case.create', { purpose: 'intake', athleteId, openedOn: TODAY });
  const { file } = await made.ask('case.open', { caseId });
  return file;
}

function heard() {
  const events: EventPayload<'case.changed'>[] = [];
  made.service.on('case.changed', (payload) => events.push(payload));
  return events;
}

describe('cases', () => {
  test('a new case has the next number, an athlete of its own, and lies on the shelf with what is missing', async () => {
    const first = await newCase();
    await newCase();
    expect(first.case).toMatchObject({ number: '2026-001', purpose: 'intake', openedOn: TODAY });
    const { total, rows } = await made.ask('shelf.list', everything);
    expect([total, ...rows.map((row) => row.number)]).toEqual([2, '2026-002', '2026-001']);
    expect(rows[0]?.missing).not.toEqual([]);
  });

  test('cases asked for at the same time get numbers of their own', async () => {
    await Promise.all(Array.from({ length: 20 }, () => newCase()));
    const { rows } = await made.ask('shelf.list', everything);
    expect(new Set(rows.map((row) => row.number)).size).toBe(20);
  });

  test('a second case of an athlete shares the athlete, and hears of every edit to the athlete and of no other', async () => {
    const first = await newCase();
    const second = await newCase(first.athlete.id);
    const events = heard();
    const patch = (kind: 'athlete' | 'case', recordId: string, fields: object) =>
      made.ask('case.edit', { caseId: first.case.id, edits: [{ op: 'patch', kind, id: recordId, fields }] as never });
    await patch('case', first.case.id, { note: 'x' });
    expect(events.map((event) => event.caseId)).toEqual([first.case.id]);
    await patch('athlete', first.athlete.id, { massKg: 70 });
    expect(events.slice(1).map((event) => event.caseId)).toEqual([first.case.id, second.case.id]);
    expect((await made.ask('case.open', { caseId: second.case.id })).file).toMatchObject({
      revision: events[2]?.revision,
      athlete: { massKg: 70 },
    });
  });

  test('an injury on file changes what the shelf says of both cases of the athlete', async () => {
    const first = await newCase();
    await newCase(first.athlete.id);
    const record = { ...EXAMPLES.injury, athleteId: first.athlete.id, condition: 'cardiac-red-flag' as const };
    const fields = { hasRedFlags: true };
    await made.ask('case.edit', {
      caseId: first.case.id,
      edits: [
        { op: 'create', kind: 'injury', record },
        { op: 'patch', kind: 'athlete', id: first.athlete.id, fields },
      ],
    });
    const { rows } = await made.ask('shelf.list', everything);
    expect(rows.map((row) => row.cautions.length > 0)).toEqual([true, true]);
  });

  test('edit, undo, redo and history answer as the store does', async () => {
    const { case: opened } = await newCase();
    const caseId = opened.id;
    const edited = await made.ask('case.edit', {
      caseId,
      edits: [{ op: 'patch', kind: 'case', id: caseId, fields: { question: 'Why?' } }],
    });
    expect(edited).toEqual({ revision: 1, undo: 'question of the case', redo: null });
    expect(await made.ask('case.undo', { caseId })).toEqual({ revision: 2, undo: null, redo: 'question of the case' });
    expect(await made.ask('case.redo', { caseId })).toEqual({ revision: 3, undo: 'question of the case', redo: null });
    const { changes } = await made.ask('case.history', { caseId, limit: 1 });
    expect(changes).toMatchObject([{ before: { question: '' }, after: { question: 'Why?' }, isUndone: false }]);
  });

  test('edits sent without waiting are stored in the order they were sent', async () => {
    const { case: opened } = await newCase();
    const numbers = Array.from({ length: 40 }, (_, n) => n);
    await Promise.all(
      numbers.map((n) =>
        made.ask('case.edit', {
          caseId: opened.id,
          edits: [{ op: 'patch', kind: 'case', id: opened.id, fields: { note: String(n) } }],
        }),
      ),
    );
    expect((await made.ask('case.open', { caseId: opened.id })).file.case.note).toBe('39');
  });
});

describe('what is refused', () => {
  test.each(['', 'case', 'case.remove', '__proto__', 'constructor', 'toString', 'hasOwnProperty', 'x'.repeat(9999)])(
    'channel «%.20s» is not one',
    async (channel) => {
      const error = await made.refusal(channel, {});
      expect(error.code).toBe('not-found');
      expect(error.message.length).toBeLessThan(200);
    },
  );

  const malformed: readonly unknown[] = [
    null,
    undefined,
    'text',
    7,
    [],
    { unknown: 1 },
    JSON.parse('{"__proto__": {}}'),
  ];
  test.each(CHANNEL_NAMES)('%s answers nonsense with a sentence', async (channel) => {
    const empty = channel === 'app.info' || channel === 'store.verify';
    for (const request of malformed.slice(0, empty ? 6 : undefined)) {
      expect(await made.refusal(channel, request)).toMatchObject({
        code: 'input-malformed',
        message: expect.stringMatching(/^In .+\.$/),
      });
    }
  });

  test('an edit is refused at the field that is wrong, and nothing of the request is stored', async () => {
    const { case: opened, athlete } = await newCase();
    const edit = (fields: object) => ({ op: 'patch', kind: 'athlete', id: athlete.id, fields });
    const good = edit({ name: 'Ada' });
    const cases: readonly (readonly [object, string])[] = [
      [edit({ massKg: 'heavy' }), 'edits.1.fields.massKg'],
      [edit({ massKg: -1 }), 'edits.1.fields.massKg'],
      [edit({ note: 'x'.repeat(10_001) }), 'edits.1.fields.note'],
      [edit({ birthDate: '2001-02-29' }), 'edits.1.fields.birthDate'],
      [edit({ id: id(9) }), 'edits.1.fields'],
      [{ op: 'patch', kind: 'nobody', id: athlete.id, fields: {} }, 'edits.1.kind'],
      [{ op: 'destroy', kind: 'athlete', id: athlete.id }, 'edits.1.op'],
    ];
    for (const [bad, where] of cases) {
      const error = await made.refusal('case.edit', { caseId: opened.id, edits: [good, bad] });
      expect(error).toMatchObject({ code: 'input-malformed', path: where });
    }
    const { file } = await made.ask('case.open', { caseId: opened.id });
    expect([file.revision, file.athlete.name]).toEqual([0, '']);
  });

  test('a report or a file cannot be smuggled in by an edit', async () => {
    const { case: opened } = await newCase();
    for (const kind of ['report', 'media'] as const) {
      const record = { ...EXAMPLES[kind], caseId: opened.id };
      const error = await made.refusal('case.edit', { caseId: opened.id, edits: [{ op: 'create', kind, record }] });
      expect(error.code).toBe('input-malformed');
    }
  });

  test('a record of another case, through whichever edit: it is not found, and stays as it was', async () => {
    const [mine, theirs] = [await newCase(), await newCase()];
    const record = { ...EXAMPLES.jumpTest, caseId: theirs.case.id };
    const injury = { ...EXAMPLES.injury, athleteId: theirs.athlete.id };
    const given: Edit[] = [
      { op: 'create', kind: 'jumpTest', record },
      { op: 'create', kind: 'injury', record: injury },
    ];
    await made.ask('case.edit', { caseId: theirs.case.id, edits: given });
    const before = await made.ask('case.open', { caseId: theirs.case.id });
    const intrusions: Edit[] = [
      { op: 'patch', kind: 'jumpTest', id: record.id, fields: { note: 'x' } },
      { op: 'remove', kind: 'jumpTest', id: record.id },
      { op: 'remove', kind: 'injury', id: injury.id },
      { op: 'patch', kind: 'athlete', id: theirs.athlete.id, fields: { massKg: 1 } },
      { op: 'patch', kind: 'case', id: theirs.case.id, fields: { note: 'x' } },
      { op: 'create', kind: 'jumpTrial', record: { ...EXAMPLES.jumpTrial, testId: record.id } },
      { op: 'create', kind: 'jumpTest', record: { ...record, id: id(61) } },
    ];
    for (const edit of intrusions) {
      const error = await made.refusal('case.edit', { caseId: mine.case.id, edits: [edit] });
      expect(error.code).toBe('not-found');
    }
    expect(await made.ask('case.open', { caseId: theirs.case.id })).toEqual(before);
    expect((await made.ask('case.open', { caseId: mine.case.id })).file.revision).toBe(0);
  });

  test('an athlete nobody knows', async () => {
    const error = await made.refusal('case.create', { purpose: 'study', athleteId: id(1), openedOn: TODAY });
    expect(error).toMatchObject({ code: 'not-found', path: 'athleteId' });
  });

  test('an event nobody sends', () => {
    expect(() => made.service.on('toString' as never, () => {})).toThrow(
      expect.objectContaining({ code: 'not-found' }),
    );
  });
});

describe('the folder', () => {
  test('what the program is, and that the store is sound', async () => {
    expect(await made.ask('app.info', {})).toMatchObject({
      schemaVersion: SHIPPED,
      host: 'command line',
      storeFolder: made.folder,
    });
    await newCase();
    expect(await made.ask('store.verify', {})).toEqual({ problems: [] });
  });

  test('closing refuses new calls and waits for those under way, and a next start finds all as it was', async () => {
    const { case: opened } = await newCase();
    const edits = [{ op: 'patch', kind: 'case', id: opened.id, fields: { note: 'last word' } }];
    const underWay = made.service.dispatch('case.edit', { caseId: opened.id, edits });
    const closed = made.service.close();
    expect(await made.refusal('app.info', {})).toMatchObject({ code: 'cancelled' });
    expect(await underWay).toMatchObject({ ok: true });
    await closed;
    const again = await aService(made.folder);
    expect((await again.ask('case.open', { caseId: opened.id })).file.case.note).toBe('last word');
    await again.service.close();
  });

  test('what a program ended after an edit had not judged yet is judged at the next start', async () => {
    const { case: opened, athlete } = await newCase();
    await made.service.close();
    const store = openSqliteCaseStore(made.folder, { host: 'test', pid: process.pid, since: '' });
    const fields = { hasRedFlags: true };
    await store.apply(opened.id, [{ op: 'patch', kind: 'athlete', id: athlete.id, fields }], after(10_000));
    expect((await store.shelf(everything)).rows[0]?.cautions).toEqual([]);
    await store.close();
    const again = await aService(made.folder);
    expect((await again.ask('shelf.list', everything)).rows[0]?.cautions).not.toEqual([]);
    await again.service.close();
  });

  test('a second program is told who has it; once the first closes, it is free', async () => {
    await expect(aService(made.folder)).rejects.toMatchObject({
      code: 'store-locked',
      message: expect.stringContaining(`command line, process ${process.pid}`),
    });
    await made.service.close();
    await (await aService(made.folder)).service.close();
    expect(fs.existsSync(`${made.folder}/open-in.json`)).toBe(false);
  });

  test('a listener that stopped hears nothing more', async () => {
    const events: unknown[] = [];
    const stop = made.service.on('case.changed', (payload) => events.push(payload));
    await newCase();
    stop();
    await newCase();
    expect(events).toHaveLength(1);
  });
});
