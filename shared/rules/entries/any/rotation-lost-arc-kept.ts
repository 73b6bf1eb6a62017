import type { RuleEntry } from '../../ruleEntry.ts';

export const rotationLostArcKept = {
  id: 'any/rotation-lost-arc-kept',
  kind: 'monitor',
  movement: 'any',
  phase: 'profile',
  region: 'shoulder',
  all: [
    { measure: 'shoulder.irDeficit', comparator: '>=', threshold: 18, unit: 'deg' },
    { measure: 'shoulder.arcDeficit', comparator: '<=', threshold: 5, unit: 'deg' },
    { measure: 'athlete.throws', comparator: 'is', threshold: true, unit: null },
  ],
  wording: {
    athlete: {
      finding: 'Your throwing shoulder turns in less than the other one by {value}, but it turns as much in all.',
      intervention: 'Nothing to stretch. Say if it hurts or slips. It is measured again in four weeks.',
    },
    practitioner: {
      finding:
        'Internal rotation is down by {value} on the dominant side, the whole arc is kept: outside both published categories.',
      intervention:
        'Record as baseline, same rater again in four weeks, ask about symptoms. No stretching on this number alone.',
    },
    clinician: {
      finding: 'Internal-rotation deficit of {value}, total arc preserved: outside both published categories.',
      intervention:
        'Record as baseline; same rater in four weeks; enquire about symptoms. No stretching on this value alone.',
    },
  },
  drill: null,
  retest: { measure: 'shoulder.irDeficit', afterDays: 28 },
  loads: ['practice'],
  effects: [
    { condition: 'anterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'posterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'multidirectional-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'rotator-cuff', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'superior-labrum', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'acromioclavicular-joint', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'elbow-ulnar-collateral-ligament', effect: 'keep', change: '', unsafeFor: [] },
  ],
  sources: ['wilk2011', 'wilk2012', 'manske2013'],
  evidence: 'limited',
  basis: 'derived',
  defersTo: ['a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
