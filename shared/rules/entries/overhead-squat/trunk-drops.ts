import type { RuleEntry } from '../../ruleEntry.ts';

export const trunkDrops = {
  id: 'overhead-squat/trunk-drops',
  kind: 'intervention',
  movement: 'overhead-squat',
  phase: 'descent',
  region: 'whole-body',
  all: [{ measure: 'squat.trunkTibiaDiff', comparator: '>', threshold: 10, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your upper body tips forward in the squat: {value} more than your shins.',
      intervention: 'Squat to a box, only as deep as you stay in position. Have your hips and ankles looked at.',
    },
    practitioner: {
      finding: 'The trunk drops forward of the shin line: {value}.',
      intervention: 'Look at hip and ankle range; box squat to a depth that holds position.',
    },
    clinician: {
      finding: 'Trunk inclination exceeds that of the shin by {value} (criterion above {threshold}).',
      intervention: 'Assess hip and ankle range; box squat to a depth that maintains position.',
    },
  },
  drill: 'box-squat',
  retest: { measure: 'squat.trunkTibiaDiff', afterDays: 28 },
  loads: ['leg-strength', 'practice'],
  effects: [
    { condition: 'anterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'posterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'multidirectional-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'rotator-cuff', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'superior-labrum', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'acromioclavicular-joint', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'elbow-ulnar-collateral-ligament', effect: 'keep', change: '', unsafeFor: [] },
    {
      condition: 'low-back-pain',
      effect: 'replace',
      change: 'Box or split squat to a short range with little load, trunk near mid-range.',
      plain: 'A high box squat or a split squat with little weight, your back near its middle position.',
      unsafeFor: ['anterior-cruciate-ligament', 'bone-stress'],
    },
  ],
  sources: ['dill2014', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
