import type { RuleEntry } from '../../ruleEntry.ts';

export const externalRotationNotGained = {
  id: 'any/external-rotation-not-gained',
  kind: 'monitor',
  movement: 'any',
  phase: 'profile',
  region: 'shoulder',
  all: [
    { measure: 'shoulder.erGain', comparator: '<', threshold: 5, unit: 'deg' },
    { measure: 'athlete.throws', comparator: 'is', threshold: true, unit: null },
  ],
  wording: {
    athlete: {
      finding: 'Your throwing arm turns out hardly more than the other one: {value}.',
      intervention:
        'Talk it over with a doctor or physiotherapist. Use your upper body more, and never force your shoulder.',
    },
    practitioner: {
      finding: 'The throwing arm has gained little external rotation: {value}.',
      intervention:
        'Record it and talk it over with a clinician; work on what trunk and shoulder blade give, and never force the shoulder.',
    },
    clinician: {
      finding: 'Limited external-rotation gain of the throwing arm: {value} (criterion below {threshold}).',
      intervention: 'Record and discuss; address trunk and scapular contribution; no forced external rotation.',
    },
  },
  drill: null,
  retest: { measure: 'shoulder.erGain', afterDays: 56 },
  loads: ['practice'],
  effects: [
    {
      condition: 'anterior-shoulder-instability',
      effect: 'replace',
      change: 'No stretching into external rotation at all. Control of the shoulder blade with the arm at the side.',
      plain:
        'Do not stretch your arm turned out at all. Practise control of your shoulder blade with the arm at your side.',
      unsafeFor: [],
    },
    {
      condition: 'multidirectional-shoulder-instability',
      effect: 'replace',
      change:
        'Low-load control in the mid-range, shoulder blade first, in the steps of a physiotherapist. No stretching, hanging or long-lever load.',
      plain:
        'Easy control in the middle of the movement, shoulder blade first, in the steps of your physiotherapist. No stretching, no hanging and no weight far from your body.',
      unsafeFor: [],
    },
    { condition: 'posterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'rotator-cuff', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'acromioclavicular-joint', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'elbow-ulnar-collateral-ligament', effect: 'keep', change: '', unsafeFor: [] },
    {
      condition: 'superior-labrum',
      effect: 'modify',
      change: 'No fast late cocking, heavy biceps load or pull on the arm.',
      unsafeFor: [],
    },
  ],
  sources: ['manske2013', 'wilk2015'],
  evidence: 'limited',
  basis: 'published',
  defersTo: ['a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
