import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { calibrationFrom, draftFrom } from '../../shared/model/calibrationDraft.ts';
import type { Edit } from '../../shared/model/edit.ts';
import { type CaseFile, caseFile, KINDS } from '../../shared/model/records.ts';
import { applyEdits } from '../../shared/model/applyEdits.ts';
import type { CaseStore } from '../../shared/ports/caseStore.ts';
import { AT, after, creating, EXAMPLES, id, WHOLE_CASE } from './examples.ts';

const CASE = EXAMPLES.case.id;
const ATHLETE = EXAMPLES.athlete.id;
const OPENING = creating(['athlete', 'case']);

const patchMass = (massKg: number): Edit => ({ op: 'patch', kind: 'athlete', id: ATHLETE, fields: { massKg } });
const patchGoals = (goals: string): Edit => ({ op: 'patch', kind: 'athlete', id: ATHLETE, fields: { goals } });
const addInjury: Edit = { op: 'create', kind: 'injury', record: EXAMPLES.injury };
/** A case of its own athlete. */
const opening = (n: number): Edit[] => [
  { op: 'create', kind: 'athlete', record: { ...EXAMPLES.athlete, id: id(300 + n), name: `Athlete ${n}` } },
  {
    op: 'create',
    kind: 'case',
    record: { ...EXAMPLES.case, id: id(400 + n), athleteId: id(300 + n), number: `2026-00${n}` },
  },
];
const ROSTER = { id: id(500), fileName: 'squad.csv' };
const renamed = (n: number): Edit => ({ op: 'patch', kind: 'athlete', id: id(300 + n), fields: { name: 'New' } });
const page = { search: '', archived: false, offset: 0, limit: 100 };

/** Everything in a file but its revision, which counts up with undo too. */
function contents(file: CaseFile) {
  return { ...file, revision: 0 };
}

function refusal(code: string) {
  return expect.objectContaining({ name: 'DomainError', code, message: expect.stringMatching(/^.{20,}\.$/s) });
}

/**
 * What any case store must do. `reopen` returns the store as a next start of the program would find it; a store that
 * keeps nothing returns itself.
 */
export function caseStoreConformance(
  name: string,
  make: () => Promise<{ store: CaseStore; reopen: () => Promise<CaseStore>; dispose: () => Promise<void> }>,
): void {
  describe(`${name} keeps cases as any case store must`, () => {
    let made: Awaited<ReturnType<typeof make>>;
    let store: CaseStore;
    beforeEach(async () => {
      made = await make();
      store = made.store;
    });
    afterEach(() => made.dispose());

    async function reopen() {
      store = await made.reopen();
    }

    /** A second case of the same athlete. */
    async function createSibling() {
      const record = { ...EXAMPLES.case, id: id(102), number: '2026-002' };
      await store.create([{ op: 'create', kind: 'case', record }], after(1));
      return record.id;
    }

    async function createMany(count: number) {
      for (let n = 1; n <= count; n++) {
        const athlete = { ...EXAMPLES.athlete, id: id(1000 + n), name: `Athlete ${n}`, note: '' };
        const record = {
          ...EXAMPLES.case,
          id: id(2000 + n),
          athleteId: athlete.id,
          number: `2026-${String(n).padStart(3, '0')}`,
        };
        await store.create(
          [
            { op: 'create', kind: 'athlete', record: athlete },
            { op: 'create', kind: 'case', record },
          ],
          after(n),
        );
      }
    }

    /** As work that goes on, unless said otherwise. */
    const apply = (edits: readonly Edit[], at: number, continues = true) =>
      store.apply(CASE, edits, after(at), continues);
    const steps = async () => new Set((await store.history(CASE, 100)).map((change) => change.step)).size;
    const find = async (search: string) => (await store.shelf({ ...page, search })).rows;

    describe('create and open', () => {
      test('several cases are made together, or none of them', async () => {
        await expect(store.createAll([opening(1), opening(2), opening(1)], AT, ROSTER)).rejects.toEqual(
          refusal('conflict'),
        );
        const invalid: Edit[] = [
          ...opening(4),
          { op: 'create', kind: 'injury', record: { ...EXAMPLES.injury, id: 'x' } },
        ];
        await expect(store.createAll([opening(3), invalid], AT, ROSTER)).rejects.toMatchObject({ name: 'DomainError' });
        expect(await store.shelf(page)).toEqual({ total: 0, rows: [] });
        await store.createAll([opening(1), opening(2)], AT, ROSTER);
        await reopen();
        expect((await store.shelf(page)).rows.map(({ athleteName }) => athleteName).toSorted()).toEqual([
          'Athlete 1',
          'Athlete 2',
        ]);
        expect(await store.verify()).toEqual([]);
      });

      test('a roster is known by the cases it left on the shelf and whether they were worked on, across restarts', async () => {
        await store.createAll([opening(1), opening(2), opening(3)], AT, ROSTER);
        await store.createAll([opening(4)], after(1), { id: id(501), fileName: 'later.csv' });
        await store.create(OPENING, after(2));
        const [first, second, third] = [id(401), id(402), id(403)];
        await store.apply(second, [{ op: 'patch', kind: 'athlete', id: id(302), fields: { massKg: 70 } }], after(3));
        await store.apply(
          third,
          [{ op: 'patch', kind: 'case', id: third, fields: { archivedOn: '2026-11-25' } }],
          after(4),
        );
        await reopen();
        expect(await store.rosters()).toEqual([
          {
            rosterId: id(501),
            fileName: 'later.csv',
            takenAt: after(1),
            cases: [{ caseId: id(404), athleteName: 'Athlete 4', isWorkedOn: false }],
          },
          {
            rosterId: ROSTER.id,
            fileName: 'squad.csv',
            takenAt: AT,
            cases: [
              { caseId: first, athleteName: 'Athlete 1', isWorkedOn: false },
              { caseId: second, athleteName: 'Athlete 2', isWorkedOn: true },
            ],
          },
        ]);
        const { purpose } = EXAMPLES.case;
        expect((await store.people()).map((one) => [one.caseId, one.athleteId, one.name, one.isOpenIntake])).toEqual([
          ...[1, 2, 3, 4].map((n) => [id(400 + n), id(300 + n), `Athlete ${n}`, purpose === 'intake' && n !== 3]),
          [CASE, ATHLETE, EXAMPLES.athlete.name, purpose === 'intake'],
        ]);
        await store.erase(first);
        expect((await store.rosters())[1]?.cases).toHaveLength(1);
        expect(await store.verify()).toEqual([]);
      });

      test('edits of several cases are kept together, a step of undo in each, or none of them', async () => {
        await store.createAll([opening(1), opening(2)], AT, ROSTER);
        const both = [1, 2].map((n) => ({ caseId: id(400 + n), edits: [renamed(n)] }));
        const before = [contents(await store.open(id(401))), await store.editState(id(401))];
        await expect(
          store.applyAll([...both, { caseId: id(402), edits: [addInjury] }], after(1)),
        ).rejects.toMatchObject({
          name: 'DomainError',
        });
        expect([contents(await store.open(id(401))), await store.editState(id(401))]).toEqual(before);
        await store.applyAll(both, after(2));
        await reopen();
        await store.undo(id(402), after(3));
        const names = await Promise.all([401, 402].map(async (n) => (await store.open(id(n))).athlete.name));
        expect(names).toEqual(['New', 'Athlete 2']);
        expect(await store.verify()).toEqual([]);
      });

      test('screening sessions are listed with their day and battery, those of archived cases are not', async () => {
        await store.create(OPENING, AT);
        await store.apply(
          CASE,
          [{ op: 'create', kind: 'screeningSession', record: EXAMPLES.screeningSession }],
          after(1),
        );
        const { heldOn, batteryId, batteryVersion } = EXAMPLES.screeningSession;
        const screening = { caseId: CASE, heldOn, batteryId, batteryVersion, batteryLabel: null };
        expect(await store.screenings()).toEqual([screening]);
        const archive: Edit = { op: 'patch', kind: 'case', id: CASE, fields: { archivedOn: heldOn } };
        await store.apply(CASE, [archive], after(2));
        expect(await store.screenings()).toEqual([]);
      });

      test('a case with a record of every kind comes back value for value, and valid', async () => {
        await store.create(WHOLE_CASE, AT);
        await reopen();
        const file = await store.open(CASE);
        expect(caseFile.parse(file)).toEqual(file);
        expect(file).toEqual({
          revision: 0,
          judgedBy: { shared: [], held: null },
          case: EXAMPLES.case,
          athlete: EXAMPLES.athlete,
          injuries: [EXAMPLES.injury],
          bodyMeasurements: [EXAMPLES.bodyMeasurement],
          shoulderRecords: [EXAMPLES.shoulderRecord],
          instabilityEvents: [EXAMPLES.instabilityEvent],
          neurovascularChecks: [EXAMPLES.neurovascularCheck],
          provocationTests: [EXAMPLES.provocationTest],
          questionnaireTotals: [EXAMPLES.questionnaireTotal],
          screeningSessions: [EXAMPLES.screeningSession],
          screeningResults: [EXAMPLES.screeningResult],
          jumpTests: [EXAMPLES.jumpTest],
          jumpTrials: [EXAMPLES.jumpTrial],
          ownMovements: [EXAMPLES.ownMovement],
          ownRules: [EXAMPLES.ownRule],
          movementTrials: [EXAMPLES.movementTrial],
          landmarkTracks: [EXAMPLES.landmarkTrack],
          pointRepeats: [EXAMPLES.pointRepeat],
          stills: [EXAMPLES.still],
          trialEvents: [EXAMPLES.trialEvent],
          enteredMeasures: [EXAMPLES.enteredMeasure],
          findingDecisions: [EXAMPLES.findingDecision],
          reports: [EXAMPLES.report],
          media: [EXAMPLES.media],
        });
        expect(await store.verify()).toEqual([]);
      });

      test('undo does not reach the opening of a case', async () => {
        await store.create(OPENING, AT);
        expect(await store.editState(CASE)).toEqual({ revision: 0, undo: null, redo: null });
        expect(await store.undo(CASE, after(1))).toEqual({ revision: 0, undo: null, redo: null });
      });

      test('a second case of a known athlete shows the same athlete and injuries', async () => {
        await store.create([...OPENING, addInjury], AT);
        const sibling = await createSibling();
        const file = await store.open(sibling);
        expect([file.athlete, file.injuries]).toEqual([EXAMPLES.athlete, [EXAMPLES.injury]]);
        expect(await store.casesOfSameAthlete(CASE)).toEqual([CASE, sibling]);
      });

      test.each([
        ['without a case', creating(['athlete']), 'input-missing'],
        ['for an athlete nobody knows', creating(['case']), 'not-found'],
        ['with a record of no owner', [...OPENING, ...creating(['jumpTrial'])], 'not-found'],
      ] as const)('refuses to create %s, and leaves nothing behind', async (_what, edits, code) => {
        await expect(store.create(edits, AT)).rejects.toEqual(refusal(code));
        expect((await store.shelf(page)).total).toBe(0);
        await store.create(OPENING, AT);
      });

      test('refuses an id that is in use', async () => {
        await store.create(OPENING, AT);
        await expect(store.create(OPENING, AT)).rejects.toEqual(refusal('conflict'));
      });

      test('an unknown case is not found, whatever is asked of it', async () => {
        const asks = [
          store.open(id(77)),
          store.apply(id(77), [patchMass(70)], AT),
          store.undo(id(77), AT),
          store.redo(id(77), AT),
          store.editState(id(77)),
          store.history(id(77), 10),
          store.writeSummaries(new Map([[id(77), { missing: [], cautions: [] }]])),
          store.lastEditAt(id(77)),
          store.casesOfSameAthlete(id(77)),
        ];
        for (const ask of asks) await expect(ask).rejects.toEqual(refusal('not-found'));
      });
    });

    describe('apply', () => {
      beforeEach(() => store.create(OPENING, AT));

      test('gives what applyEdits gives, edit after edit', async () => {
        const rest = creating(KINDS.filter((kind) => kind !== 'athlete' && kind !== 'case'));
        let expected = await store.open(CASE);
        for (const edits of [
          ...rest.map((edit) => [edit]),
          [patchMass(70)],
          [{ op: 'remove', kind: 'jumpTest', id: id(6) }],
        ]) {
          expected = applyEdits(expected, edits as Edit[]);
          expect((await store.apply(CASE, edits as Edit[], after(10_000))).revision).toBe(expected.revision);
          expect(await store.open(CASE)).toEqual(expected);
        }
        expect(await store.verify()).toEqual([]);
      });

      test('several edits are one step, stored together or not at all', async () => {
        const before = await store.open(CASE);
        const lost: Edit = { op: 'patch', kind: 'injury', id: id(78), fields: { note: 'x' } };
        await expect(store.apply(CASE, [patchMass(70), addInjury, lost], AT)).rejects.toEqual(refusal('not-found'));
        expect(await store.open(CASE)).toEqual(before);
        await store.apply(CASE, [patchMass(70), addInjury], AT);
        await store.undo(CASE, AT);
        expect(contents(await store.open(CASE))).toEqual(contents(before));
      });

      test('an edit that changes nothing adds no step', async () => {
        await store.apply(CASE, [patchMass(67.4)], after(1));
        expect(await store.editState(CASE)).toEqual({ revision: 1, undo: null, redo: null });
      });

      test.each([
        ['a mass of the wrong type', { op: 'patch', kind: 'athlete', id: ATHLETE, fields: { massKg: '70' } }],
        ['text that is too long', { op: 'patch', kind: 'athlete', id: ATHLETE, fields: { name: 'x'.repeat(301) } }],
        ['a number that is none', { op: 'patch', kind: 'athlete', id: ATHLETE, fields: { massKg: Number.NaN } }],
        ['a field that does not exist', { op: 'patch', kind: 'athlete', id: ATHLETE, fields: { shoeSize: 44 } }],
        ['half a record', { op: 'create', kind: 'injury', record: { id: id(3), athleteId: ATHLETE } }],
      ])('refuses %s', async (_what, edit) => {
        await expect(store.apply(CASE, [edit as unknown as Edit], AT)).rejects.toEqual(refusal('input-malformed'));
      });

      test('touches only records of this case or its athlete', async () => {
        const other = { ...EXAMPLES.athlete, id: id(201) };
        await store.create(
          [
            { op: 'create', kind: 'athlete', record: other },
            {
              op: 'create',
              kind: 'case',
              record: { ...EXAMPLES.case, id: id(202), athleteId: id(201), number: '2026-009' },
            },
            { op: 'create', kind: 'injury', record: { ...EXAMPLES.injury, athleteId: id(201) } },
            { op: 'create', kind: 'jumpTest', record: { ...EXAMPLES.jumpTest, caseId: id(202) } },
          ],
          AT,
        );
        const theirs = await store.open(id(202));
        const intrusions: Edit[] = [
          { op: 'patch', kind: 'athlete', id: id(201), fields: { massKg: 1 } },
          { op: 'patch', kind: 'injury', id: id(3), fields: { note: '' } },
          { op: 'remove', kind: 'jumpTest', id: id(6) },
          { op: 'create', kind: 'jumpTrial', record: EXAMPLES.jumpTrial },
          {
            op: 'create',
            kind: 'enteredMeasure',
            record: { ...EXAMPLES.enteredMeasure, caseId: id(202), trialId: null },
          },
          { op: 'patch', kind: 'case', id: CASE, fields: { athleteId: id(201) } },
        ];
        for (const edit of intrusions)
          await expect(store.apply(CASE, [edit], AT)).rejects.toEqual(refusal('not-found'));
        const taken: Edit = { op: 'create', kind: 'jumpTest', record: EXAMPLES.jumpTest };
        await expect(store.apply(CASE, [taken], AT)).rejects.toEqual(refusal('conflict'));
        expect(await store.open(id(202))).toEqual(theirs);
      });

      test('records keep the order in which they were made, also after one was removed and brought back', async () => {
        for (const n of [31, 32, 33]) {
          await store.apply(CASE, [{ op: 'create', kind: 'injury', record: { ...EXAMPLES.injury, id: id(n) } }], AT);
        }
        const before = await store.open(CASE);
        await store.apply(CASE, [{ op: 'remove', kind: 'injury', id: id(32) }], AT);
        await store.undo(CASE, AT);
        expect((await store.open(CASE)).injuries).toEqual(before.injuries);
      });
    });

    describe('undo and redo', () => {
      beforeEach(() => store.create(OPENING, AT));

      test('go back and forth through every step, across restarts', async () => {
        const steps: Edit[][] = [
          [patchMass(70)],
          creating(['injury', 'jumpTest', 'jumpTrial']),
          creating(['movementTrial', 'landmarkTrack', 'trialEvent', 'enteredMeasure']),
          [{ op: 'remove', kind: 'movementTrial', id: id(8) }],
          [{ op: 'patch', kind: 'case', id: CASE, fields: { purpose: 'referral', urgency: 'soon' } }],
        ];
        const states = [contents(await store.open(CASE))];
        for (const [i, edits] of steps.entries()) {
          await store.apply(CASE, edits, after(10_000 * (i + 1)));
          states.push(contents(await store.open(CASE)));
        }
        await reopen();
        for (const state of states.slice(0, -1).toReversed()) {
          await store.undo(CASE, after(100_000));
          expect(contents(await store.open(CASE))).toEqual(state);
        }
        expect((await store.editState(CASE)).undo).toBeNull();
        await reopen();
        for (const state of states.slice(1)) {
          await store.redo(CASE, after(200_000));
          expect(contents(await store.open(CASE))).toEqual(state);
        }
        expect((await store.editState(CASE)).redo).toBeNull();
        expect(await store.verify()).toEqual([]);
      });

      test('say in words what they would do', async () => {
        await store.apply(CASE, [addInjury], after(1));
        expect(await store.apply(CASE, [patchMass(70)], after(2))).toEqual({
          revision: 2,
          undo: 'body mass of the athlete',
          redo: null,
        });
        expect(await store.undo(CASE, after(3))).toEqual({
          revision: 3,
          undo: 'injury added',
          redo: 'body mass of the athlete',
        });
      });

      test('a new edit takes the place of what was undone, also once it is undone itself', async () => {
        await store.apply(CASE, [addInjury], after(1));
        await store.undo(CASE, after(2));
        await store.apply(CASE, [patchMass(70)], after(3));
        expect((await store.editState(CASE)).redo).toBeNull();
        expect((await store.undo(CASE, after(4))).redo).toBe('body mass of the athlete');
        await store.redo(CASE, after(5));
        expect((await store.redo(CASE, after(6))).redo).toBeNull();
        const file = await store.open(CASE);
        expect([file.injuries, file.athlete.massKg]).toEqual([[], 70]);
      });

      test('a report that was made stays, and undo passes over it', async () => {
        await store.apply(CASE, [addInjury], after(1));
        await store.apply(CASE, creating(['media', 'report']), after(2));
        expect((await store.editState(CASE)).undo).toBe('injury added');
        const state = await store.undo(CASE, after(3));
        const file = await store.open(CASE);
        expect([file.injuries, file.reports, file.media]).toEqual([[], [EXAMPLES.report], [EXAMPLES.media]]);
        expect(state).toMatchObject({ undo: null, redo: 'injury added' });
        await store.redo(CASE, after(4));
        expect((await store.open(CASE)).injuries).toEqual([EXAMPLES.injury]);
        expect(await store.verify()).toEqual([]);
      });

      test('making a report between undo and redo does not take redo away', async () => {
        await store.apply(CASE, [addInjury], after(1));
        await store.undo(CASE, after(2));
        await store.apply(CASE, creating(['media', 'report']), after(3));
        expect((await store.redo(CASE, after(4))).undo).toBe('injury added');
      });

      test('an imported file stays in the case when its jump is undone', async () => {
        await store.apply(CASE, creating(['jumpTest']), after(1));
        await store.apply(CASE, creating(['media', 'jumpTrial']), after(2));
        expect((await store.editState(CASE)).undo).toBe('jump added');
        await store.undo(CASE, after(3));
        let file = await store.open(CASE);
        expect([file.jumpTrials, file.media]).toEqual([[], [EXAMPLES.media]]);
        await store.redo(CASE, after(4));
        file = await store.open(CASE);
        expect([file.jumpTrials, file.media]).toEqual([[EXAMPLES.jumpTrial], [EXAMPLES.media]]);
        expect(await store.verify()).toEqual([]);
      });

      test('never overwrite what another case of the athlete wrote since', async () => {
        const sibling = await createSibling();
        await store.apply(CASE, [patchMass(70)], after(2));
        await store.apply(CASE, [addInjury], after(3));
        await store.apply(
          sibling,
          [{ op: 'patch', kind: 'injury', id: id(3), fields: { status: 'resolved' } }],
          after(4),
        );
        await expect(store.undo(CASE, after(5))).rejects.toEqual(refusal('conflict'));
        expect((await store.open(CASE)).injuries[0]?.status).toBe('resolved');
        await store.undo(sibling, after(6));
        await store.undo(CASE, after(7));
        await store.apply(sibling, [patchMass(71)], after(8));
        await expect(store.undo(CASE, after(9))).rejects.toEqual(refusal('conflict'));
        expect((await store.open(CASE)).athlete.massKg).toBe(71);
        expect(await store.verify()).toEqual([]);
      });
    });

    describe('typing', () => {
      beforeEach(() => store.create(OPENING, AT));

      test('a sentence typed in one go is one step of undo, every keystroke stored', async () => {
        const before = await store.open(CASE);
        const sentence = 'Throw without fear';
        for (let i = 0; i < sentence.length; i++) {
          await store.apply(CASE, [patchGoals(sentence.slice(0, i + 1))], after(1000 * i));
          expect((await store.open(CASE)).athlete.goals).toBe(sentence.slice(0, i + 1));
        }
        const changes = await store.history(CASE, 100);
        expect(changes[0]).toMatchObject({
          op: 'patch',
          at: after(17_000),
          before: { goals: EXAMPLES.athlete.goals },
          after: { goals: sentence },
        });
        expect(changes.filter((change) => change.op === 'patch')).toHaveLength(1);
        await store.undo(CASE, after(20_000));
        expect(contents(await store.open(CASE))).toEqual(contents(before));
        await store.redo(CASE, after(21_000));
        expect((await store.open(CASE)).athlete.goals).toBe(sentence);
        expect(await store.verify()).toEqual([]);
      });

      test.each([
        ['after a pause of more than 3 s', [patchGoals('a')], [patchGoals('ab')], 3001],
        ['with the clock set back', [patchGoals('a')], [patchGoals('ab')], -1],
        ['in another field', [patchGoals('a')], [patchMass(70)], 1],
        ['together with another edit', [patchGoals('a')], [patchGoals('ab'), patchMass(70)], 1],
        ['after several edits', [patchGoals('a'), patchMass(70)], [patchGoals('ab')], 1],
        [
          'after creating a record',
          [addInjury],
          [{ op: 'patch', kind: 'injury', id: id(3), fields: { note: 'x' } }],
          1,
        ],
      ] as [string, Edit[], Edit[], number][])('is a step of its own %s', async (_when, first, second, pauseMs) => {
        await store.apply(CASE, first, after(10_000));
        await store.apply(CASE, second, after(10_000 + pauseMs));
        expect(new Set((await store.history(CASE, 100)).map((change) => change.step)).size).toBe(3);
      });

      test('a length typed soon after its ends were clicked is one step, each click another', async () => {
        const trial = { ...EXAMPLES.movementTrial, calibration: null, calibrationDraft: null };
        await store.apply(CASE, [{ op: 'create', kind: 'movementTrial', record: trial }], after(1));
        const blank = { ...draftFrom(null), lengthUM: 0.001 };
        const [from, to] = [
          { xPx: 1, yPx: 2 },
          { xPx: 301, yPx: 2 },
        ];
        const drafts = [
          { ...blank, from },
          { ...blank, from, to },
          ...[1, 1.2, 1.25].map((lengthM) => ({ ...blank, from, to, lengthM })),
        ];
        for (const [i, draft] of drafts.entries()) {
          const fields = { calibrationDraft: draft, calibration: calibrationFrom(draft) };
          await store.apply(CASE, [{ op: 'patch', kind: 'movementTrial', id: trial.id, fields }], after(10 + i));
        }
        const kept = async () => (await store.open(CASE)).movementTrials[0];
        expect((await kept())?.calibration).toMatchObject({ lengthM: 1.25 });
        for (const draft of [drafts[1], drafts[0], null]) {
          await store.undo(CASE, after(30));
          expect(await kept()).toEqual({ ...trial, calibrationDraft: draft });
        }
        expect(await store.verify()).toEqual([]);
      });

      test('is a step of its own after undo', async () => {
        await store.apply(CASE, [patchGoals('a')], after(1));
        await store.undo(CASE, after(2));
        await store.apply(CASE, [patchGoals('b')], after(3));
        await store.undo(CASE, after(4));
        expect((await store.open(CASE)).athlete.goals).toBe(EXAMPLES.athlete.goals);
      });

      test('through two cases of one athlete keeps the history of each true', async () => {
        const sibling = await createSibling();
        await store.apply(CASE, [patchGoals('a')], after(10));
        await store.apply(sibling, [patchGoals('ab')], after(20));
        await store.apply(CASE, [patchGoals('abc')], after(30));
        expect((await store.open(sibling)).athlete.goals).toBe('abc');
        expect(await store.verify()).toEqual([]);
        await store.undo(CASE, after(40));
        expect((await store.open(CASE)).athlete.goals).toBe('ab');
      });
    });

    describe('work stored in parts', () => {
      const made = { ...EXAMPLES.injury, note: '' };
      const note = (words: string): Edit => ({ op: 'patch', kind: 'injury', id: made.id, fields: { note: words } });
      beforeEach(() => store.create(OPENING, AT));

      test('goes on with the step that began it, made or patched, whatever the pause: one undo, one redo', async () => {
        await apply([{ op: 'create', kind: 'injury', record: made }], 1, false);
        for (const [i, words] of ['1', '1 2', '1 2 3'].entries()) await apply([note(words)], 60_000 * (i + 1));
        await reopen();
        expect((await store.open(CASE)).injuries).toEqual([{ ...made, note: '1 2 3' }]);
        expect(await steps()).toBe(2);
        await store.undo(CASE, after(1e6));
        expect((await store.open(CASE)).injuries).toEqual([]);
        await store.redo(CASE, after(1e6));
        expect((await store.open(CASE)).injuries).toEqual([{ ...made, note: '1 2 3' }]);
        await apply([note('4')], 2e6, false);
        await apply([note('4 5')], 3e6);
        await store.undo(CASE, after(4e6));
        expect((await store.open(CASE)).injuries).toEqual([{ ...made, note: '1 2 3' }]);
        expect(await store.verify()).toEqual([]);
      });

      test('is a step of its own where another came between, where that was undone, or in another record', async () => {
        await apply([{ op: 'create', kind: 'injury', record: made }], 1, false);
        await apply([patchMass(70)], 2, false);
        await apply([note('1')], 3);
        expect(await steps()).toBe(4);
        await store.undo(CASE, after(4));
        await apply([note('2')], 5);
        await store.undo(CASE, after(6));
        expect((await store.open(CASE)).injuries).toEqual([made]);
        await apply([note('3'), patchMass(80)], 7);
        await store.undo(CASE, after(8));
        expect((await store.open(CASE)).injuries).toEqual([made]);
        expect((await store.open(CASE)).athlete.massKg).toBe(70);
        expect(await store.verify()).toEqual([]);
      });

      test('through two cases of one athlete keeps the history of each true', async () => {
        const sibling = await createSibling();
        await apply([{ op: 'create', kind: 'injury', record: made }], 1, false);
        await store.apply(sibling, [note('theirs')], after(2));
        await apply([note('theirs, mine')], 3);
        await store.undo(CASE, after(4));
        expect((await store.open(sibling)).injuries).toEqual([{ ...made, note: 'theirs' }]);
        expect(await store.verify()).toEqual([]);
      });
    });

    describe('history', () => {
      test('is newest first, limited, and marks what was undone', async () => {
        await store.create(OPENING, AT);
        await store.apply(CASE, [patchMass(70)], after(1));
        await store.apply(CASE, [addInjury], after(2));
        await store.undo(CASE, after(3));
        await reopen();
        const changes = await store.history(CASE, 2);
        expect(changes).toEqual([
          {
            step: 3,
            at: after(2),
            kind: 'injury',
            recordId: id(3),
            op: 'create',
            before: null,
            after: EXAMPLES.injury,
            isUndone: true,
            label: 'injury added',
          },
          {
            step: 2,
            at: after(1),
            kind: 'athlete',
            recordId: ATHLETE,
            op: 'patch',
            before: { massKg: 67.4 },
            after: { massKg: 70 },
            isUndone: false,
            label: 'body mass of the athlete',
          },
        ]);
      });

      test('the last edit is the latest one in force, through whichever case; reports and imports are none', async () => {
        await store.create(OPENING, AT);
        const sibling = await createSibling();
        await store.apply(CASE, [patchMass(70)], after(5000));
        await store.apply(CASE, creating(['media', 'report']), after(10_000));
        expect(await store.lastEditAt(CASE)).toBe(after(5000));
        await store.apply(CASE, [addInjury], after(15_000));
        await store.undo(CASE, after(20_000));
        expect(await store.lastEditAt(CASE)).toBe(after(5000));
        await store.apply(sibling, [{ op: 'patch', kind: 'case', id: sibling, fields: { note: 'x' } }], after(25_000));
        expect(await store.lastEditAt(CASE)).toBe(after(5000));
        await store.apply(sibling, [patchMass(71)], after(30_000));
        expect(await store.lastEditAt(CASE)).toBe(after(30_000));
      });

      test('a case is to be judged from its last change until its summary is written, across restarts', async () => {
        const summary = { missing: [], cautions: [] };
        await store.create(OPENING, AT);
        const sibling = await createSibling();
        expect(await store.unjudged()).toEqual([CASE, sibling]);
        await store.writeSummaries(new Map([[CASE, summary]]));
        await store.writeSummaries(new Map([[sibling, summary]]));
        await reopen();
        expect(await store.unjudged()).toEqual([]);
        await store.apply(CASE, [{ op: 'patch', kind: 'case', id: CASE, fields: { note: 'x' } }], after(10_000));
        expect(await store.unjudged()).toEqual([CASE]);
        await store.writeSummaries(new Map([[CASE, summary]]));
        await store.apply(sibling, [patchMass(70)], after(20_000));
        await reopen();
        expect(await store.unjudged()).toEqual([CASE, sibling]);
        await store.writeSummaries(new Map([[CASE, summary]]));
        await store.undo(sibling, after(30_000));
        expect(await store.unjudged()).toEqual([CASE, sibling]);
      });

      test('an edit of the athlete counts up the revision of every case that shows it', async () => {
        await store.create(OPENING, AT);
        const sibling = await createSibling();
        await store.apply(CASE, [patchMass(70)], after(2));
        await store.apply(CASE, [{ op: 'patch', kind: 'case', id: CASE, fields: { note: 'x' } }], after(3));
        expect((await store.editState(CASE)).revision).toBe(2);
        expect((await store.editState(sibling)).revision).toBe(1);
      });
    });

    describe('shelf', () => {
      test('pages through all cases, last touched first', async () => {
        await createMany(7);
        await store.apply(id(2003), [{ op: 'patch', kind: 'case', id: id(2003), fields: { note: 'x' } }], after(100));
        const pages = await Promise.all([0, 3, 6, 9].map((offset) => store.shelf({ ...page, offset, limit: 3 })));
        expect(pages.map((one) => one.total)).toEqual([7, 7, 7, 7]);
        expect(pages.flatMap((one) => one.rows.map((row) => row.number))).toEqual(
          ['003', '007', '006', '005', '004', '002', '001'].map((n) => `2026-${n}`),
        );
      });

      test('shows what the last judging wrote, across restarts', async () => {
        await store.create(OPENING, AT);
        await store.writeSummaries(
          new Map([[CASE, { missing: ['needs body mass'], cautions: ['stop and be seen: pain'] }]]),
        );
        await reopen();
        expect(await store.shelf(page)).toEqual({
          total: 1,
          rows: [
            {
              caseId: CASE,
              number: '2026-001',
              athleteName: 'Orla Tidemark',
              purpose: 'study',
              touchedAt: AT,
              isInvented: true,
              isArchived: false,
              missing: ['needs body mass'],
              cautions: ['stop and be seen: pain'],
              match: null,
            },
          ],
        });
      });

      test('archived cases are on a shelf of their own', async () => {
        await createMany(2);
        await store.apply(
          id(2001),
          [{ op: 'patch', kind: 'case', id: id(2001), fields: { archivedOn: '2026-11-25' } }],
          after(9),
        );
        expect((await store.shelf(page)).rows.map((row) => row.number)).toEqual(['2026-002']);
        expect((await store.shelf({ ...page, archived: true })).rows.map((row) => row.number)).toEqual(['2026-001']);
      });

      test('running numbers go up within their year', async () => {
        expect(await store.nextNumber(2026)).toBe('2026-001');
        await createMany(9);
        expect(await store.nextNumber(2026)).toBe('2026-010');
        expect(await store.nextNumber(2027)).toBe('2027-001');
        await store.apply(
          id(2001),
          [{ op: 'patch', kind: 'case', id: id(2001), fields: { number: '2026-999' } }],
          after(90),
        );
        expect(await store.nextNumber(2026)).toBe('2026-1000');
        await store.apply(
          id(2001),
          [{ op: 'patch', kind: 'case', id: id(2001), fields: { number: '2026-old' } }],
          after(99),
        );
        expect(await store.nextNumber(2026)).toBe('2026-010');
      });
    });

    describe('search', () => {
      beforeEach(async () => {
        await store.create(WHOLE_CASE, AT);
        const other = { ...EXAMPLES.athlete, id: id(201), name: 'Bram Kestrelholt', note: '', goals: '' };
        const record = {
          ...EXAMPLES.case,
          id: id(202),
          athleteId: id(201),
          number: '2026-002',
          question: '',
          purpose: 'intake' as const,
        };
        await store.create(
          [
            { op: 'create', kind: 'athlete', record: other },
            { op: 'create', kind: 'case', record },
          ],
          after(1),
        );
      });

      test.each([
        ['the name', 'orla'],
        ['the beginning of a word', 'tide'],
        ['the case number', '2026-001'],
        ['the diagnosis', 'posterior instab'],
        ['a note on one result', 'trunk leans'],
        ['a note on a measure', 'still'],
        ['a file name', 'plate'],
        ['words that stand in different records', 'tidemark outstretched tired'],
        ['letters without their accents', 'grosse'.replace('ss', 'ß')],
        ['letters of another script', '肩'],
      ])('finds %s and marks it', async (_what, search) => {
        const rows = await find(search);
        expect(rows.map((row) => row.caseId)).toEqual([CASE]);
        expect(rows[0]?.match).toMatch(/⟦[^⟧]+⟧/);
      });

      test('says what it found where', async () => {
        expect((await find('kestrel'))[0]?.match).toContain('⟦Kestrelholt⟧');
      });

      test.each([
        'zzz',
        'tidemark zzz',
        'kestrelholt outstretched',
        '"; DROP TABLE athlete; --',
        'NEAR(a b)',
        '"unclosed',
        '001-2026',
      ])('finds nothing and does not fail for %s', async (search) => {
        expect(await find(search)).toEqual([]);
      });

      test.each(['', '   ', '—', '"', '* ^ : ( )'])('shows the whole shelf for «%s»', async (search) => {
        expect(await find(search)).toHaveLength(2);
      });

      test('follows every change, undo included', async () => {
        await store.apply(CASE, [patchGoals('xylophone')], after(2));
        expect(await find('xylophone')).toHaveLength(1);
        await store.undo(CASE, after(3));
        expect(await find('xylophone')).toEqual([]);
        await store.apply(CASE, [{ op: 'remove', kind: 'movementTrial', id: id(8) }], after(4));
        expect(await find('still')).toEqual([]);
        expect(await store.verify()).toEqual([]);
      });
    });

    test('does not take back what another case wrote since, though it reads the same again', async () => {
      await store.create(OPENING, AT);
      const sibling = await createSibling();
      await store.apply(CASE, [patchGoals('Throw higher')], after(10_000));
      await store.apply(sibling, [patchGoals('Throw lower')], after(20_000));
      await store.apply(sibling, [patchGoals('Throw higher')], after(30_000));
      await expect(store.undo(CASE, after(40_000))).rejects.toEqual(refusal('conflict'));
      await reopen();
      expect([(await store.open(CASE)).athlete.goals, await store.verify()]).toEqual(['Throw higher', []]);
    });

    test('erases an athlete with every case of theirs, and no one else', async () => {
      await store.create(WHOLE_CASE, AT);
      const sibling = await createSibling();
      await store.create(opening(7), after(2));
      const files = (await store.keptFiles()).map(({ sha256 }) => sha256);
      const erased = await store.erase(sibling);
      await reopen();
      expect(erased.caseIds.toSorted()).toEqual([CASE, sibling].toSorted());
      expect(erased.files.toSorted()).toEqual([...new Set(files)].toSorted());
      for (const caseId of erased.caseIds) {
        await expect(store.open(caseId)).rejects.toEqual(refusal('not-found'));
        await expect(store.history(caseId, 10)).rejects.toEqual(refusal('not-found'));
      }
      const shelf = await store.shelf(page);
      expect(shelf.rows.map(({ caseId }) => caseId)).toEqual([id(407)]);
      expect([await store.keptFiles(), await store.verify()]).toEqual([[], []]);
      await store.create(WHOLE_CASE, after(3));
      expect(contents(await store.open(CASE)).athlete.id).toBe(ATHLETE);
    });

    test('erases no one where there is no such case', async () => {
      await store.create(OPENING, AT);
      await expect(store.erase(id(99))).rejects.toEqual(refusal('not-found'));
      expect((await store.shelf(page)).total).toBe(1);
    });
  });
}
