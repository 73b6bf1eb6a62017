import { expect, test } from 'vitest';
import { openSqliteCaseStore } from '../../../main/store/sqliteCaseStore.ts';
import { blankAthlete, blankCase, blankInjury } from '../../../shared/model/blank.ts';
import { after, creating, EXAMPLES } from '../../conformance/examples.ts';
import { HOLDER } from './aFolder.ts';
import { anOldStore } from './anOldStore.ts';

/** What the layout of seven migrations knew of a record; every field since is as in a blank one. */
function asKept<T extends object>(example: T, blank: T, since: readonly (keyof T)[]): T {
  return { ...example, ...Object.fromEntries(since.map((field) => [field, blank[field]])) };
}

const CASE_ID = EXAMPLES.case.id;
const ATHLETE = asKept(EXAMPLES.athlete, blankAthlete(EXAMPLES.athlete.id), [
  'identifier',
  'ageBand',
  'legLengthLeftM',
  'legLengthRightM',
  'armLengthLeftM',
  'armLengthRightM',
  'limbsOn',
  'trainingYears',
  'weeklySessions',
  'weeklyHours',
  'consentWithdrawnOn',
  'guardianName',
  'guardianConsentOn',
  'redFlagsClearedOn',
  'medicines',
  'allergies',
  'otherHistory',
  'accessNeeds',
]);
const CASE = asKept(EXAMPLES.case, blankCase(EXAMPLES.case, '', 'study', ''), [
  'practitionerRole',
  'practitionerContact',
  'copiesTo',
  'triedSoFar',
  'effects',
  'toldAndWanted',
  'consentToReferral',
  'consentToReferralOn',
]);
const INJURY = asKept(EXAMPLES.injury, blankInjury(EXAMPLES.injury, EXAMPLES.injury), [
  'tissue',
  'code',
  'mode',
  'contact',
  'recurrence',
  'surgery',
  'clearedRole',
  'clearedFor',
  'clearedUntil',
]);

test('a store from before shoulder records keeps athlete, case and injury as they were, with nothing known of what is new', async () => {
  const store = openSqliteCaseStore(anOldStore(7, ['athlete', 'case', 'injury'], null), HOLDER);
  expect(await store.verify()).toEqual([]);
  const file = await store.open(CASE_ID);
  expect([file.athlete, file.case, file.injuries]).toEqual([ATHLETE, CASE, [INJURY]]);
  expect([file.shoulderRecords, file.bodyMeasurements]).toEqual([[], []]);
  await store.close();
});

test('an injury removed by the program of then comes back whole, and takes a shoulder record', async () => {
  const store = openSqliteCaseStore(anOldStore(7, ['athlete', 'case', 'injury'], 'injury'), HOLDER);
  await store.undo(CASE_ID, after(60_000));
  expect((await store.open(CASE_ID)).injuries).toEqual([INJURY]);
  await store.apply(CASE_ID, creating(['shoulderRecord', 'instabilityEvent']), after(120_000));
  expect((await store.open(CASE_ID)).shoulderRecords).toEqual([EXAMPLES.shoulderRecord]);
  expect(await store.verify()).toEqual([]);
  await store.close();
});
