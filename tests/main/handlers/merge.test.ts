import { UNSAID } from '../../../shared/model/blank.ts';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { ScreeningResult } from '../../../shared/model/screening.ts';
import { EXAMPLES, id } from '../../conformance/examples.ts';
import { type Asked, aService, TODAY } from './aService.ts';

// Two laptops took the roster in separately: same people, other ids. Laws of a merge; no oracle needed.

let here: Asked;
let there: Asked;
beforeEach(async () => {
  [here, there] = [await aService(), await aService()];
});
afterEach(async () => {
  await here.dispose();
  await there.dispose();
});

const RUN = { heldOn: TODAY, batteryId: 'general' };
const ROSTER = 'Name,DOB\nÅsa Ek,2003-01-01\nBo Lind,2001-01-01\nCy Moe,2000-01-01\n';
type Typed = Partial<ScreeningResult> & Pick<ScreeningResult, 'itemId' | 'side'>;

type Run = { readonly athletes: readonly { readonly results: readonly object[] }[] };
/** The run with the first result of the first athlete made into others. */
function edited(change: (one: object) => readonly object[]) {
  return (run: Run): Run => ({
    ...run,
    athletes: run.athletes.map((one, i) => (i === 0 ? { ...one, results: one.results.flatMap(change) } : one)),
  });
}

const swap = async (from: Asked, to: Asked) =>
  to.ask('run.merge', { fileName: 'run.json', text: (await from.ask('run.export', RUN)).text, choices: [] });

let records = 0;
/** A run of a laptop: for each athlete of the roster, what was typed. */
async function take(laptop: Asked, results: readonly (readonly Typed[] | null)[]): Promise<string[]> {
  const { cases } = await laptop.ask('roster.import', {
    fileName: 'squad.csv',
    text: ROSTER,
    mapping: [],
    openedOn: TODAY,
  });
  for (const [i, typed] of results.entries()) {
    const caseId = cases[i]?.caseId ?? '';
    if (typed === null) continue;
    const sessionId = id(90_000 + records++);
    const session = { id: sessionId, caseId, ...RUN, rater: 'R', batteryVersion: '1', note: '', battery: null };
    const empty = { valueSi: null, grade: null, isPositive: null, painNrs: null, note: '', ...UNSAID };
    await laptop.ask('case.edit', {
      caseId,
      edits: [
        { op: 'create', kind: 'screeningSession', record: session },
        ...typed.map((one) => ({
          op: 'create' as const,
          kind: 'screeningResult' as const,
          record: { ...empty, ...one, id: id(90_000 + records++), sessionId },
        })),
      ],
    });
  }
  return cases.map(({ caseId }) => caseId);
}

const resultsOf = async (laptop: Asked, caseId: string) =>
  (await laptop.ask('case.open', { caseId })).file.screeningResults
    .map(({ itemId, side, valueSi, painNrs }) => [itemId, side, valueSi, painNrs].join(' '))
    .toSorted();

const lunge = (side: 'left' | 'right', valueSi: number, painNrs: number | null = null): Typed => ({
  itemId: 'weight-bearing-lunge',
  side,
  valueSi,
  painNrs,
});

test('law: what only the other laptop has is added, what is alike stays, a conflict goes as it was decided', async () => {
  const [asa = '', bo = ''] = await take(here, [[lunge('left', 0.1), lunge('right', 0.12)], []]);
  await take(there, [[lunge('left', 0.1), lunge('right', 0.09, 4)], [lunge('left', 0.11)], [lunge('left', 0.13)]]);
  const file = { fileName: 'there.json', text: (await there.ask('run.export', RUN)).text };

  const compared = await here.ask('run.compare', file);
  expect(
    compared.athletes.map(({ name, caseId, alike, added, conflicts }) => [
      name,
      caseId,
      alike,
      added.length,
      conflicts.length,
    ]),
  ).toEqual([
    ['Åsa Ek', asa, 1, 0, 1],
    ['Bo Lind', bo, 0, 1, 0],
    ['Cy Moe', null, 0, 0, 0],
  ]);
  expect(compared.athletes[0]?.conflicts[0]).toMatchObject({
    ours: { valueSi: 0.12, painNrs: null },
    theirs: { valueSi: 0.09, painNrs: 4 },
  });
  expect(compared.athletes[2]?.reason).toContain('not in this run here');

  const before = await resultsOf(here, asa);
  expect(await here.refusal('run.merge', { ...file, choices: [] })).toMatchObject({ code: 'conflict' });
  expect([await resultsOf(here, asa), await resultsOf(here, bo)]).toEqual([before, []]);

  const choice = { caseId: asa, itemId: 'weight-bearing-lunge', side: 'right' as const };
  const ours = await here.ask('run.merge', { ...file, choices: [{ ...choice, take: 'ours' }] });
  expect(ours).toMatchObject({ caseIds: [bo], added: 1, replaced: 0 });
  expect(await resultsOf(here, asa)).toEqual(before);
  const theirs = await here.ask('run.merge', { ...file, choices: [{ ...choice, take: 'theirs' }] });
  expect(theirs).toMatchObject({ caseIds: [asa], added: 0, replaced: 1 });
  expect(await resultsOf(here, asa)).toEqual(['weight-bearing-lunge left 0.1 ', 'weight-bearing-lunge right 0.09 4']);
  // The pain that came over stands on the shelf, as if it had been typed here.
  const shelf = await here.ask('shelf.list', { search: '', archived: false, offset: 0, limit: 9 });
  expect(shelf.rows.find(({ caseId }) => caseId === asa)?.cautions.join()).toMatch(/pain/i);
  await here.ask('case.undo', { caseId: asa });
  expect(await resultsOf(here, asa)).toEqual(before);
});

test('law: merged both ways, both laptops hold the same; merged again, nothing changes', async () => {
  const mine = await take(here, [[lunge('left', 0.1)], []]);
  const theirs = await take(there, [[], [lunge('left', 0.11)]]);
  await swap(there, here);
  await swap(here, there);
  for (const i of [0, 1]) {
    expect(await resultsOf(here, mine[i] ?? '')).toEqual(await resultsOf(there, theirs[i] ?? ''));
    expect(await resultsOf(here, mine[i] ?? '')).toHaveLength(1);
  }
  expect(await swap(there, here)).toEqual({ caseIds: [], added: 0, replaced: 0 });
});

test('law: a squad is merged whole or not at all: one result the store refuses, and nobody has anything new', async () => {
  const caseIds = await take(here, [[], [], []]);
  await take(there, [[lunge('left', 0.1)], [lunge('left', 0.11)], [lunge('left', 0.12)]]);
  const file = { fileName: 'there.json', text: (await there.ask('run.export', RUN)).text, choices: [] };
  // The id that the last result would get is taken: the fault shows only when the others are already being written.
  const taken = 5000 + 2 * caseIds.length + 1 + 2;
  const record = { ...EXAMPLES.screeningResult, ...lunge('right', 0.2), id: id(taken), grade: null };
  const sessions = await here.ask('case.open', { caseId: caseIds[0] ?? '' });
  await here.ask('case.edit', {
    caseId: caseIds[0] ?? '',
    edits: [
      {
        op: 'create',
        kind: 'screeningResult',
        record: { ...record, sessionId: sessions.file.screeningSessions[0]?.id ?? '' },
      },
    ],
  });
  const before = await Promise.all(caseIds.map((caseId) => resultsOf(here, caseId)));
  expect(await here.refusal('run.merge', file)).toMatchObject({ message: 'An id of these records is already in use.' });
  expect(await Promise.all(caseIds.map((caseId) => resultsOf(here, caseId)))).toEqual(before);
  // With other ids the same file goes in.
  expect(await here.ask('run.merge', file)).toMatchObject({ added: 3 });
  expect((await here.ask('store.verify', {})).problems).toEqual([]);
});

test.each([
  ['an athlete twice', (run: Run) => ({ ...run, athletes: [...run.athletes, ...run.athletes] }), 'athletes.3.name'],
  ['a result twice', edited((one) => [one, one]), 'athletes.0.results.1.itemId'],
  ['a test with sides and none given', edited((one) => [{ ...one, side: 'none' }]), 'athletes.0.results.0.side'],
  ['a grade for a measured test', edited((one) => [{ ...one, grade: 'met' }]), 'athletes.0.results.0.grade'],
  ['a lunge of 3 m', edited((one) => [{ ...one, valueSi: 3 }]), 'athletes.0.results.0.valueSi'],
])('a run with %s is refused at its place, and nobody has anything new', async (_what, change, where) => {
  const caseIds = await take(here, [[], [], []]);
  await take(there, [[lunge('left', 0.1)], [lunge('left', 0.11)], []]);
  const run = JSON.parse((await there.ask('run.export', RUN)).text) as Run;
  const request = { fileName: 'run.json', text: JSON.stringify(change(run)) };
  expect(await here.refusal('run.compare', request)).toMatchObject({ path: where });
  expect(await here.refusal('run.merge', { ...request, choices: [] })).toMatchObject({ path: where });
  expect((await Promise.all(caseIds.map((caseId) => resultsOf(here, caseId)))).flat()).toEqual([]);
});

test.each([
  ['no JSON', 'name,dob', 'input-malformed'],
  ['another file of ours', '{"format":"caseframe-trial"}', 'input-malformed'],
  ['a test not known here', null, 'not-comparable'],
])('%s is refused and nothing is stored', async (_what, text, code) => {
  const [asa = ''] = await take(here, [[]]);
  await take(there, [[lunge('left', 0.1)]]);
  const run = (await there.ask('run.export', RUN)).text.replace('weight-bearing-lunge', 'standing-on-one-ear');
  for (const channel of ['run.compare', 'run.merge']) {
    const request = { fileName: 'run.json', text: text ?? run, ...(channel === 'run.merge' ? { choices: [] } : {}) };
    expect(await here.refusal(channel, request)).toMatchObject({ code });
  }
  expect(await resultsOf(here, asa)).toEqual([]);
});
