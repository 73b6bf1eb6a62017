import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { assessCase } from '../../../shared/assess/assessCase.ts';
import type { RuleBody } from '../../../shared/model/ownRule.ts';
import { ownCopy } from '../../../shared/rules/ownCopy.ts';
import { SHIPPED_RULES } from '../../../shared/rules/shippedRules.ts';
import { EXAMPLES, id } from '../../conformance/examples.ts';
import { type Asked, aService, TODAY } from './aService.ts';

// Rules of one's own for every case (5 of the brief of the judging). Cases and limits are invented.

const shipped = SHIPPED_RULES.find(({ id: ruleId }) => ruleId === 'any/external-rotators-weak');
if (shipped === undefined) throw new Error('no such rule');
/** The limit of the shipped rule is 0.75; this one asks for 0.9. */
const stricter: RuleBody = {
  ...ownCopy(shipped),
  all: [{ measure: 'shoulder.erIrRatio', comparator: '<', threshold: 0.9, unit: '1' }],
};
const OWN = 'own/any-external-rotators-weak';
const RULE = id(700);

let made: Asked;
let cases: string[] = [];
beforeEach(async () => {
  made = await aService();
  cases = [];
  for (const [i, ratio] of [0.85, 0.88, 0.95].entries()) {
    const { caseId } = await made.ask('case.create', { purpose: 'study', athleteId: null, openedOn: TODAY });
    const record = {
      ...EXAMPLES.enteredMeasure,
      id: id(300 + i),
      caseId,
      trialId: null,
      measureId: 'shoulder.erIrRatio',
      phase: null,
      side: 'right' as const,
      valueSi: ratio,
      flag: null,
    };
    await made.ask('case.edit', { caseId, edits: [{ op: 'create', kind: 'enteredMeasure', record }] });
    cases.push(caseId);
  }
});
afterEach(() => made.dispose());

const put = (rule: RuleBody, isOn = true) =>
  made.ask('rules.editShared', { edits: [{ id: RULE, rule: { id: RULE, isOn, rule } }] });
const judge = async (caseId: string) => assessCase((await made.ask('case.open', { caseId })).file).findings;
const firesIn = async () => {
  const fired = await Promise.all(
    cases.map(async (caseId) =>
      (await judge(caseId)).some(({ ruleId, outcome }) => ruleId === OWN && outcome !== 'not-assessed'),
    ),
  );
  return fired.flatMap((one, i) => (one ? [i] : []));
};

describe('a rule for every case', () => {
  test('judges each of them, only while it is on, and tells every window', async () => {
    const told: string[] = [];
    made.service.on('case.changed', ({ caseId }) => told.push(caseId));
    await put(stricter, false);
    expect([await firesIn(), told]).toEqual([[], []]);
    await put(stricter);
    expect(await firesIn()).toEqual([0, 1]);
    expect(told.toSorted()).toEqual(cases.toSorted());
  });

  test('is previewed without a case: would fire in 2 of 3', async () => {
    const { here, of, fires } = await made.ask('rules.preview', { caseId: null, rule: stricter });
    expect([here, of, fires.map(({ caseId }) => caseId).toSorted()]).toEqual([null, 3, cases.slice(0, 2).toSorted()]);
  });

  test('that is changed is off until it is switched on again: half a limit judges nobody', async () => {
    await put(stricter);
    const half = { ...stricter, all: [{ measure: 'shoulder.erIrRatio', comparator: '<', threshold: 9, unit: '1' }] };
    const { rules } = await put(half);
    expect(rules.map(({ isOn }) => isOn)).toEqual([false]);
    expect(await firesIn()).toEqual([]);
    expect((await put(half)).rules[0]?.isOn).toBe(true);
    expect(await firesIn()).toEqual([0, 1, 2]);
  });

  test('that fails a check is kept, says why, and judges nothing', async () => {
    const { rules } = await put({ ...stricter, effects: [] });
    expect(rules[0]?.problems[0]).toMatchObject({ part: 'effects' });
    expect(await firesIn()).toEqual([]);
  });

  test('is taken back and done again, across a restart', async () => {
    await put(stricter, false);
    await put(stricter);
    await made.service.close();
    made = await aService(made.folder, 9000);
    expect((await made.ask('rules.undoShared', {})).rules[0]?.isOn).toBe(false);
    expect(await firesIn()).toEqual([]);
    expect(await made.ask('rules.undoShared', {})).toMatchObject({ rules: [], canUndo: false, canRedo: true });
    await made.ask('rules.redoShared', {});
    expect((await made.ask('rules.redoShared', {})).rules[0]?.isOn).toBe(true);
    expect(await firesIn()).toEqual([0, 1]);
    expect(await made.ask('store.verify', {})).toEqual({ problems: [] });
  });

  test('outlives the athlete in whose store it was written', async () => {
    await put(stricter);
    for (const caseId of cases.slice(1)) {
      const { file } = await made.ask('case.open', { caseId });
      await made.ask('athlete.erase', { caseId, number: file.case.number });
    }
    cases = cases.slice(0, 1);
    expect(await firesIn()).toEqual([0]);
    expect(await made.ask('store.verify', {})).toEqual({ problems: [] });
  });
});

const trialOf = (i: number, movementId: string) => ({
  ...EXAMPLES.movementTrial,
  id: id(320 + i),
  caseId: cases[i] ?? '',
  movementId,
  clipSha256: null,
  painNrs: 0,
});

describe('over a movement of one’s own', () => {
  const over: RuleBody = { ...stricter, movement: 'own/turn-and-push', phase: 'whole', replaces: null };
  const movement = {
    ...EXAMPLES.ownMovement,
    label: 'Turn and push',
    events: [
      { id: 'start', label: 'Start', means: 'It begins.' },
      { id: 'end', label: 'End', means: 'It ends.' },
    ],
    phases: [{ id: 'push', label: 'Push', startsAt: 'start', endsAt: 'end', means: 'All of it.' }],
    checkpoints: [],
  };

  test('it judges every case in which a movement of that name was built, and leaves the others alone', async () => {
    for (const i of [0, 1]) {
      const record = { ...movement, id: id(310 + i), caseId: cases[i] ?? '' };
      await made.ask('case.edit', {
        caseId: cases[i] ?? '',
        edits: [
          { op: 'create', kind: 'ownMovement', record },
          { op: 'create', kind: 'movementTrial', record: trialOf(i, record.id) },
        ],
      });
    }
    const { movements, rules } = await put(over);
    expect(movements.map(({ id: name, phases }) => [name, phases.map((one) => one.id)])).toEqual([
      ['own/turn-and-push', ['push']],
    ]);
    expect(rules[0]?.problems).toEqual([]);
    expect((await made.ask('rules.preview', { caseId: null, rule: over })).fires.length).toBe(2);
    expect(await firesIn()).toEqual([0, 1]);
  });
});

describe('a pack', () => {
  test('goes out of one store and into another for every case; a tampered one is refused and nothing is kept', async () => {
    await put(stricter);
    const { text, sha256 } = await made.ask('rules.export', { caseId: null, name: 'Our clinic' });
    const other = await aService();
    const tampered = text.replace('"threshold": 0.9', '"threshold": 0.1');
    expect(tampered).not.toBe(text);
    expect(
      await other.refusal('rules.import', { caseId: null, fileName: 'tampered.json', text: tampered }),
    ).toMatchObject({ code: 'refused-for-safety' });
    expect((await other.ask('rules.shared', {})).rules).toEqual([]);
    expect(await other.ask('rules.import', { caseId: null, fileName: 'own.json', text })).toEqual({
      rules: 1,
      sha256,
      edits: null,
    });
    const { rules } = await other.ask('rules.shared', {});
    expect(rules).toMatchObject([{ isOn: true, problems: [], rule: stricter }]);
    await other.dispose();
  });
});
