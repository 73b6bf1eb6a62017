import * as fc from 'fast-check';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type Asked, aService, TODAY } from './aService.ts';

let made: Asked;
beforeEach(async () => {
  made = await aService();
});
afterEach(() => made.dispose());

const file = (text: string) => ({ fileName: 'squad.csv', text, mapping: [] });
const page = { search: '', archived: false, offset: 0, limit: 500 };
const shelf = async () => (await made.ask('shelf.list', page)).rows;
const take = (text: string) => made.ask('roster.import', { ...file(text), openedOn: TODAY });

test('a squad: an intake case each, numbered, judged, and found again instead of doubled', async () => {
  const text = 'Name,DOB,Mass (kg)\nÅsa Ek,2003-01-01,60\nBo Lind,2001-01-01,81\nåsa ek,2003-01-01,60\n';
  const preview = await made.ask('roster.preview', file(text));
  expect(preview.rows.map(({ repeats, caseId }) => [repeats, caseId])).toEqual([
    [null, null],
    [null, null],
    [2, null],
  ]);
  expect(await shelf()).toEqual([]);

  const { cases } = await take(text);
  expect(cases).toMatchObject([
    { line: 2, isNew: true },
    { line: 3, isNew: true },
  ]);
  const rows = await shelf();
  expect(rows.map(({ number, athleteName, purpose }) => [number, athleteName, purpose].join()).toSorted()).toEqual([
    '2026-001,Åsa Ek,intake',
    '2026-002,Bo Lind,intake',
  ]);
  expect(rows.every(({ missing }) => missing.length > 0)).toBe(true);

  const again = await take(`${text}Cy Moe,2000-01-01,70\n`);
  expect(again.cases.map(({ isNew }) => isNew)).toEqual([false, false, true]);
  expect(again.cases.slice(0, 2).map(({ caseId }) => caseId)).toEqual(cases.map(({ caseId }) => caseId));
  expect(await shelf()).toHaveLength(3);
  expect((await made.ask('store.verify', {})).problems).toEqual([]);
});

test('someone on the shelf in another case keeps their history: a new intake case of the same athlete', async () => {
  const { caseId } = await made.ask('case.create', { purpose: 'referral', athleteId: null, openedOn: TODAY });
  const { file: opened } = await made.ask('case.open', { caseId });
  const athleteId = opened.athlete.id;
  const fields = { name: 'Åsa Ek', massKg: 59 };
  await made.ask('case.edit', { caseId, edits: [{ op: 'patch', kind: 'athlete', id: athleteId, fields }] });
  const { cases } = await take('Name,Mass (kg)\nÅsa Ek,60\n');
  const intake = (await made.ask('case.open', { caseId: cases[0]?.caseId ?? '' })).file;
  expect(intake.athlete).toMatchObject({ id: athleteId, massKg: 59 });
  expect(intake.case.purpose).toBe('intake');
});

test('one fault anywhere and nobody is imported; the refusal names line and column', async () => {
  const text = 'Name,Mass (kg)\nA,60\nB,heavy\nC,70\n';
  const error = await made.refusal('roster.import', { ...file(text), openedOn: TODAY });
  expect(error).toMatchObject({ code: 'input-malformed', path: 'line 3, column Mass (kg)' });
  expect(await shelf()).toEqual([]);
});

test('a run is found again by its day and battery', async () => {
  const { cases } = await take('Name\nA\nB\n');
  for (const { caseId } of cases) {
    const record = {
      id: crypto.randomUUID(),
      caseId,
      heldOn: TODAY,
      rater: '',
      batteryId: 'general',
      batteryVersion: '1',
      note: '',
    };
    await made.ask('case.edit', { caseId, edits: [{ op: 'create', kind: 'screeningSession', record }] });
  }
  expect(await made.ask('run.list', {})).toEqual({
    runs: [{ heldOn: TODAY, batteryId: 'general', caseIds: cases.map(({ caseId }) => caseId) }],
  });
});

test('law: mutated files leave the shelf as it was or add exactly the athletes they hold', async () => {
  const sample = 'Name,DOB,Mass (kg)\nÅsa Ek,2003-01-01,60\n"Lind, Bo",2001-01-01,81\nCy,2000-01-01,70\n';
  const mutation = fc.tuple(fc.nat(sample.length), fc.nat(8), fc.constantFrom('"', ',', '\n', '\0', '9', 'x', ';', ''));
  await fc.assert(
    fc.asyncProperty(fc.array(mutation, { minLength: 1, maxLength: 3 }), async (mutations) => {
      const text = mutations.reduce((so, [at, cut, put]) => so.slice(0, at) + put + so.slice(at + cut), sample);
      const before = (await made.ask('shelf.list', page)).total;
      const result = await made.service.dispatch('roster.import', { ...file(text), openedOn: TODAY });
      const after = (await made.ask('shelf.list', page)).total;
      if (result.ok) {
        const { cases } = result.value as { cases: { isNew: boolean }[] };
        expect(after - before).toBe(cases.filter(({ isNew }) => isNew).length);
      } else {
        expect(result.error.code).not.toBe('internal');
        expect(after).toBe(before);
      }
    }),
    { numRuns: 150, seed: 11 },
  );
  expect((await made.ask('store.verify', {})).problems).toEqual([]);
}, 60_000);
