import { expect, test } from 'vitest';
import { judgeShoulder } from '../../../shared/assess/judgeShoulder.ts';
import { isMinor, missingOfAthlete } from '../../../shared/assess/sectionStates.ts';
import { leastAge } from '../../../shared/format/age.ts';
import { blankShoulderRecord } from '../../../shared/model/blank.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import { type InstabilityEvent, SHOULDER_FLAGS, type ShoulderRecord } from '../../../shared/model/shoulder.ts';
import { isKnown } from '../../../shared/quantity.ts';
import { EXAMPLES } from '../../conformance/examples.ts';
import { sampleCase, sampleId } from '../../support/sampleCase.ts';

const INJURY = sampleId(3);
const NO_FLAG = Object.fromEntries(SHOULDER_FLAGS.map((flag) => [flag, false]));

function shoulder(record: Partial<ShoulderRecord>, events: readonly Partial<InstabilityEvent>[] = []): CaseFile {
  const file = sampleCase();
  return {
    ...file,
    // Events are written down one by one here, and none was only counted.
    injuries: file.injuries.map((injury) => ({ ...injury, episodes: null })),
    shoulderRecords: [{ ...blankShoulderRecord({ id: sampleId(900), injuryId: INJURY }), ...record }],
    instabilityEvents: events.map((event, i) => ({
      ...EXAMPLES.instabilityEvent,
      injuryId: INJURY,
      id: sampleId(901 + i),
      ...event,
    })),
  };
}

function judged(file: CaseFile) {
  const injury = file.injuries.find(({ id }) => id === INJURY);
  const judgement = injury === undefined ? null : judgeShoulder(file, injury);
  if (judgement === null) throw new Error('the shoulder record was not judged');
  return judgement;
}

test('an injury without a fuller record is not judged', () => {
  const file = sampleCase();
  expect(file.injuries.map((injury) => judgeShoulder(file, injury))).toEqual(file.injuries.map(() => null));
});

test('a blank record gives no word, no total and no distance, and lists every flag (promise 3 of the design)', () => {
  const { frequency, etiology, direction, severity, severityIndex, laxity, distance, urgency } = judged(shoulder({}));
  expect([frequency.is, etiology.is, direction.is, severity.is, severityIndex.points, laxity.points]).toEqual(
    Array.from({ length: 6 }, () => null),
  );
  expect(isKnown(distance)).toBe(false);
  expect(urgency.unanswered).toEqual(SHOULDER_FLAGS);
});

test.each([
  ['under 25, contact sport', '2020-03-01', true, 'soon'],
  ['25 that day', '2028-05-14', true, 'routine'],
  ['no contact or overhead sport', '2020-03-01', false, 'routine'],
] as const)(
  'pathway audit of 2018: a first dislocation by injury, %s (born 2003-05-14)',
  (_what, happenedOn, isContactOrOverhead, tier) => {
    const event = { happenedOn, severity: 'dislocation', etiology: 'traumatic' } as const;
    expect(judged(shoulder({ ...NO_FLAG, isContactOrOverhead }, [event])).urgency.tier).toBe(tier);
  },
);

test('Di Giacomo 2014 through the record: 24, 4, 15 and 4 mm lie off the track, which is soon', () => {
  const numbers = { glenoidWidthM: 0.024, anteriorDefectM: 0.004, lesionWidthM: 0.015, boneBridgeM: 0.004 };
  const { distance, urgency } = judged(shoulder({ ...NO_FLAG, ...numbers }));
  expect(isKnown(distance) && distance.value * 1000).toBeCloseTo(-3.08, 9);
  expect(urgency.reasons).toEqual(['offTrack']);
});

test('common practice, no source: under 18 a guardian’s consent is needed, and consent withdrawn is none', () => {
  const file = sampleCase();
  const as = (more: Partial<CaseFile['athlete']>): CaseFile => ({
    ...file,
    case: { ...file.case, purpose: 'study' },
    athlete: { ...file.athlete, ...more },
  });
  expect(missingOfAthlete(as({}))).toEqual([]);
  expect(missingOfAthlete(as({ consentWithdrawnOn: '2026-11-20' }))).toEqual(['consent']);
  expect(missingOfAthlete(as({ birthDate: '2010-01-01' }))).toEqual(['guardian’s consent']);
  expect(missingOfAthlete(as({ birthDate: '2010-01-01', guardianConsentOn: '2026-11-18' }))).toEqual([]);
  expect(isMinor(as({ birthDate: null, ageBand: '16-17' }))).toBe(true);
  expect(isMinor(as({ birthDate: null, ageBand: null }))).toBe(false);
});

test.each([
  ['under-12', 0],
  ['12-15', 12],
  ['16-17', 16],
  ['65-over', 65],
  [null, null],
] as const)('of the age band %s the lower end counts', (band, age) => {
  expect(leastAge(band)).toBe(age);
});
