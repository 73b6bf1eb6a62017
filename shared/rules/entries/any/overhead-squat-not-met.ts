import type { RuleEntry } from '../../ruleEntry.ts';

export const overheadSquatNotMet = {
  id: 'any/overhead-squat-not-met',
  kind: 'intervention',
  movement: 'any',
  phase: 'session',
  region: 'whole-body',
  all: [{ measure: 'squat.overheadGrade', comparator: 'is', threshold: 'not-met', unit: null }],
  wording: {
    athlete: {
      finding: 'The squat with your arms up did not work yet.',
      intervention: 'Squat to a box with a weight held in front, only as deep as you stay in position.',
    },
    practitioner: {
      finding: 'The squat with arms overhead was not met.',
      intervention:
        'Box squat with a weight held in front, to a depth that holds position. Measure ankle and shoulder ranges.',
    },
    clinician: {
      finding: 'Overhead squat: standard not met.',
      intervention: 'Front-loaded box squat to a depth that maintains position; measure ankle and shoulder range.',
    },
  },
  drill: 'box-squat',
  retest: { measure: 'squat.overheadGrade', afterDays: 28 },
  loads: ['leg-strength', 'practice'],
  effects: [
    {
      condition: 'low-back-pain',
      effect: 'replace',
      change: 'Box squat to a short range without load, or split squat, trunk near mid-range.',
      plain: 'Squat to a high box without weight, or a split squat, your back near its middle position.',
      unsafeFor: ['anterior-cruciate-ligament', 'bone-stress'],
    },
    {
      condition: 'anterior-shoulder-instability',
      effect: 'modify',
      change: 'Weight held in front or none at all; arms never overhead or behind the bar.',
      unsafeFor: [],
    },
    {
      condition: 'posterior-shoulder-instability',
      effect: 'modify',
      change: 'No weight pushed away in front; hold it close to the body.',
      unsafeFor: [],
    },
    {
      condition: 'multidirectional-shoulder-instability',
      effect: 'replace',
      change: 'The same squat without any weight in the hands.',
      unsafeFor: [],
    },
    { condition: 'rotator-cuff', effect: 'modify', change: 'Arms low.', unsafeFor: [] },
    { condition: 'superior-labrum', effect: 'modify', change: 'Arms low.', unsafeFor: [] },
    {
      condition: 'acromioclavicular-joint',
      effect: 'modify',
      change: 'Weight low at the side of the body, not carried hanging.',
      unsafeFor: [],
    },
    { condition: 'elbow-ulnar-collateral-ligament', effect: 'keep', change: '', unsafeFor: [] },
  ],
  sources: ['dill2014', 'convention'],
  evidence: 'expert',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
