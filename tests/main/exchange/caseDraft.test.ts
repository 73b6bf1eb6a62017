import { expect, test } from 'vitest';
import { readCaseDraft } from '../../../main/exchange/caseDraft.ts';
import { randomSource } from '../../../main/demo/randomSource.ts';
import { sampleCase, sampleId } from '../../support/sampleCase.ts';

const CASE = sampleId(900);
const ATHLETE = sampleId(901);
const read = (data: unknown) => readCaseDraft(data, randomSource(5).id);

test('a whole case file comes in again: every record under a new id, tied together as before', () => {
  const sample = sampleCase();
  const draft = read(sample);
  const edits = draft.edits(CASE, ATHLETE);
  const records = edits.map((edit) => (edit.op === 'create' ? edit.record : null));
  const old = JSON.stringify([sample.injuries, sample.screeningSessions, sample.jumpTests, sample.movementTrials]);
  for (const record of records) expect(old).not.toContain(record?.id);
  const session = edits.find(({ kind }) => kind === 'screeningSession');
  const results = edits.filter(({ kind }) => kind === 'screeningResult');
  expect(results).toHaveLength(sample.screeningResults.length);
  for (const result of results) {
    expect(result).toMatchObject({ record: { sessionId: session?.op === 'create' ? session.record.id : '' } });
  }
  expect(edits.find(({ kind }) => kind === 'injury')).toMatchObject({ record: { athleteId: ATHLETE } });
  expect(draft.athlete).toMatchObject({ name: sample.athlete.name, massKg: sample.athlete.massKg });
  expect(draft.case).not.toHaveProperty('number');
});

test('a few lines written by hand are enough; what is left out is not entered', () => {
  const draft = read({
    athlete: { name: 'Alder', massKg: 70 },
    injuries: [{ condition: 'ankle-sprain', region: 'ankle', status: 'current' }],
    jumpTests: [{ id: 'monday', heldOn: '2026-09-01', kind: 'squat', method: 'flight-time' }],
    jumpTrials: [{ testId: 'monday', number: 1, flightTimeS: 0.5 }],
  });
  const edits = draft.edits(CASE, ATHLETE);
  expect(edits[0]).toMatchObject({
    record: { athleteId: ATHLETE, side: 'none', onset: null, hadSurgery: null, note: '' },
  });
  const [, jumpTest, jumpTrial] = edits;
  expect(jumpTest).toMatchObject({ kind: 'jumpTest', record: { caseId: CASE, frameRateHz: null } });
  expect(jumpTrial).toMatchObject({
    record: { testId: jumpTest?.op === 'create' ? jumpTest.record.id : '', flightTimeS: 0.5, isSetAside: false },
  });
});

test.each([
  [{ injury: [] }, 'injury'],
  [{ injuries: {} }, 'injuries'],
  [{ injuries: [{ region: 'ankle', status: 'current' }] }, 'condition'],
  [{ injuries: [{ condition: 'sore', region: 'ankle', status: 'current' }] }, 'condition'],
  [{ athlete: { massKg: -3 } }, 'massKg'],
  [{ athlete: { shoeSize: 44 } }, 'shoeSize'],
  [{ jumpTrials: [{ testId: 'tuesday', number: 1 }] }, 'testId'],
  [[], 'record'],
])('%j is refused, and the sentence names %s', (data, named) => {
  expect(() => read(data)).toThrow(
    expect.objectContaining({ code: 'input-malformed', message: expect.stringContaining(named) as string }) as Error,
  );
});
