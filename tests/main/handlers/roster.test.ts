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

test('columns named once are known in the next list with the same heads, across restarts, changed or forgotten', async () => {
  const asked = (name: string) => file(`Wer,Kraft,Gewicht\n${name},7,70\n`);
  const mapping = [
    { column: 'Wer', field: 'name' as const, reading: null },
    { column: 'Gewicht', field: 'mass' as const, reading: 'kg' as const },
  ];
  expect((await made.ask('roster.preview', asked('A'))).problems).not.toEqual([]);
  await made.ask('roster.import', { ...asked('A'), mapping, openedOn: TODAY });
  await made.service.close();
  made = await aService(made.folder, 9000);
  const next = await made.ask('roster.preview', asked('B'));
  expect([next.isRemembered, next.problems, next.rows[0]?.athlete.massKg]).toEqual([true, [], 70]);
  const changed = [...mapping.slice(0, 1), { column: 'Gewicht', field: 'ignore' as const, reading: null }];
  await made.ask('roster.import', { ...asked('C'), mapping: changed, openedOn: TODAY });
  const after = await made.ask('roster.preview', asked('B'));
  expect([after.isRemembered, after.rows[0]?.athlete.massKg]).toEqual([true, null]);
  // Other heads are another list.
  expect((await made.ask('roster.preview', file('Name,Gewicht\nB,70\n'))).isRemembered).toBe(false);
  await made.ask('mapping.forget', { door: 'roster', heads: ['Wer', 'Kraft', 'Gewicht'] });
  const forgotten = await made.ask('roster.preview', asked('B'));
  expect([forgotten.isRemembered, forgotten.problems.length > 0]).toEqual([false, true]);
});

test('taken back after the program was closed: what nobody worked on is archived, what somebody did is named and stays', async () => {
  await take('Name,Mass (kg)\nÅsa Ek,60\nBo Lind,81\nCy Moe,70\n');
  await made.service.close();
  made = await aService(made.folder, 9000);
  const [roster] = (await made.ask('roster.list', {})).rosters;
  const rosterId = roster?.rosterId ?? '';
  expect(roster).toMatchObject({ fileName: 'squad.csv', untouched: 3, workedOn: 0, names: [] });

  const bo = (await shelf()).find(({ athleteName }) => athleteName === 'Bo Lind')?.caseId ?? '';
  await made.ask('case.edit', { caseId: bo, edits: [{ op: 'patch', kind: 'case', id: bo, fields: { note: 'came' } }] });
  const request = { rosterId, archivedOn: TODAY, leaveWorkedOn: false };
  const error = await made.refusal('roster.takeBack', request);
  expect(error).toMatchObject({ code: 'conflict', message: expect.stringContaining('entered since for Bo Lind') });
  expect(await shelf()).toHaveLength(3);

  const taken = await made.ask('roster.takeBack', { ...request, leaveWorkedOn: true });
  expect([taken.caseIds.length, taken.left]).toEqual([2, 1]);
  expect((await shelf()).map(({ athleteName }) => athleteName)).toEqual(['Bo Lind']);
  // Archived, not lost: one undo brings an athlete back.
  await made.ask('case.undo', { caseId: taken.caseIds[0] ?? '' });
  expect(await shelf()).toHaveLength(2);
  expect((await made.ask('store.verify', {})).problems).toEqual([]);
});

test('a list of which nothing is left cannot be taken back', async () => {
  await take('Name\nA\n');
  const [roster] = (await made.ask('roster.list', {})).rosters;
  const request = { rosterId: roster?.rosterId ?? '', archivedOn: TODAY, leaveWorkedOn: false };
  await made.ask('roster.takeBack', request);
  expect(await made.ask('roster.list', {})).toEqual({ rosters: [] });
  expect(await made.refusal('roster.takeBack', request)).toMatchObject({ code: 'not-found' });
});

/** ROSTER_ROWS=10000 is the whole of it. */
const ROWS = Number(process.env['ROSTER_ROWS'] ?? 1000);

const row = (i: number) => `"Müller ${i}, Ä";${(i % 28) + 1}.11.${1980 + (i % 25)};${50 + (i % 50)},5`;

test(`${ROWS} athletes at once: previewed without a trace, one fault refuses them all, then all are taken in, found again and taken back`, async () => {
  const rows = Array.from({ length: ROWS }, (_, i) => row(i));
  const text = `\uFEFFName;Geburtsdatum;Mass (kg)\r\n${rows.join('\r\n')}\r\n`;
  const preview = await made.ask('roster.preview', file(text));
  expect([preview.rows.length, preview.problems]).toEqual([ROWS, []]);
  const faulty = text.replace(row(ROWS - 1), `${row(ROWS - 1)}x`);
  expect(await made.refusal('roster.import', { ...file(faulty), openedOn: TODAY })).toMatchObject({
    path: `line ${ROWS + 1}, column Mass (kg)`,
  });
  expect((await made.ask('shelf.list', page)).total).toBe(0);

  expect((await take(text)).cases.filter(({ isNew }) => isNew)).toHaveLength(ROWS);
  expect((await made.ask('shelf.list', page)).total).toBe(ROWS);
  const { athlete } = (await made.ask('case.open', { caseId: (await shelf())[0]?.caseId ?? '' })).file;
  expect(athlete.massKg).toBe(50.5 + (Number(/\d+/.exec(athlete.name)?.[0]) % 50));
  expect((await take(text)).cases.filter(({ isNew }) => isNew)).toEqual([]);
  const [roster] = (await made.ask('roster.list', {})).rosters;
  expect(roster).toMatchObject({ untouched: ROWS, workedOn: 0 });
  await made.ask('roster.takeBack', { rosterId: roster?.rosterId ?? '', archivedOn: TODAY, leaveWorkedOn: false });
  expect((await made.ask('shelf.list', page)).total).toBe(0);
}, 600_000);

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
      battery: null,
    };
    await made.ask('case.edit', { caseId, edits: [{ op: 'create', kind: 'screeningSession', record }] });
  }
  expect(await made.ask('run.list', {})).toEqual({
    runs: [
      {
        heldOn: TODAY,
        batteryId: 'general',
        batteryVersion: '1',
        batteryLabel: null,
        caseIds: cases.map(({ caseId }) => caseId),
      },
    ],
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
