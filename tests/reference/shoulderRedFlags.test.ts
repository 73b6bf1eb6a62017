import { expect, test } from 'vitest';
import { FLAG_TIERS, referralUrgency } from '../../shared/kernel/shoulder/referralUrgency.ts';
import { SHOULDER_FLAGS, type ShoulderFlag } from '../../shared/model/shoulder.ts';

const flags = (yes: readonly ShoulderFlag[], open: readonly ShoulderFlag[] = []) =>
  Object.fromEntries(SHOULDER_FLAGS.map((flag) => [flag, open.includes(flag) ? null : yes.includes(flag)])) as Record<
    ShoulderFlag,
    boolean | null
  >;
const QUIET = { eventCount: 1, isYoungFirstTraumatic: false, isOffTrack: null };

/** The rows of the dossier's table (section 8: regional pathways, Mitchell 2005, Visser 1999, Locher 2016). */
test.each([
  ['outOfJoint', 'emergency'],
  ['fractureSuspected', 'emergency'],
  ['vesselSigns', 'emergency'],
  ['nerveLoss', 'emergency'],
  ['openWound', 'emergency'],
  ['hotJointWithFever', 'emergency'],
  ['lockedAfterSeizure', 'emergency'],
  ['chestOrBellySigns', 'emergency'],
  ['headOrNeckSigns', 'emergency'],
  ['firstWithoutImaging', 'urgent'],
  ['overFortyAndWeak', 'urgent'],
  ['nerveLossPersists', 'urgent'],
  ['tumourSigns', 'urgent'],
  ['troubleAfterSurgery', 'urgent'],
  ['locking', 'soon'],
  ['apprehensionStopsSport', 'soon'],
] as const)('referral pathways: %s alone is %s', (flag, tier) => {
  expect(referralUrgency({ ...QUIET, flags: flags([flag]) })).toEqual({ tier, reasons: [flag], unanswered: [] });
});

test('every flag stands in the table', () => {
  expect(Object.keys(FLAG_TIERS).toSorted()).toEqual([...SHOULDER_FLAGS].toSorted());
});

test('pathway audit of 2018: a young first dislocation by injury is soon; Locher 2016: so are recurrence and off-track', () => {
  const none = flags([]);
  expect(referralUrgency({ ...QUIET, flags: none }).tier).toBe('routine');
  expect(referralUrgency({ ...QUIET, flags: none, isYoungFirstTraumatic: true }).tier).toBe('soon');
  expect(referralUrgency({ ...QUIET, flags: none, eventCount: 2 }).reasons).toEqual(['recurrent']);
  expect(referralUrgency({ ...QUIET, flags: none, isOffTrack: true }).tier).toBe('soon');
});

test('what nobody answered is no “no”: it is listed while it could make the tier sooner (promise 3 of the design)', () => {
  const open = flags(['locking'], ['vesselSigns', 'apprehensionStopsSport']);
  expect(referralUrgency({ ...QUIET, flags: open })).toEqual({
    tier: 'soon',
    reasons: ['locking'],
    unanswered: ['vesselSigns'],
  });
  expect(referralUrgency({ ...QUIET, flags: flags([], SHOULDER_FLAGS) }).unanswered).toEqual(SHOULDER_FLAGS);
});
