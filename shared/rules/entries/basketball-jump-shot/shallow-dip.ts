import type { RuleEntry } from '../../ruleEntry.ts';

export const shallowDip = {
  id: 'basketball-jump-shot/shallow-dip',
  kind: 'intervention',
  movement: 'basketball-jump-shot',
  phase: 'preparation',
  region: 'whole-body',
  all: [{ measure: 'knee.flexPeak', comparator: '<', threshold: 45, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your knees bend only a little before you jump: {value}.',
      intervention: 'Practise a deeper and quicker dip in jumps without a ball, and train your leg power.',
    },
    practitioner: {
      finding: 'Little knee bend before take-off: {value}.',
      intervention: 'A deeper, quicker dip in jumps without a ball, and leg power work.',
    },
    clinician: {
      finding: 'Limited knee flexion in the preparatory phase: {value} (criterion below {threshold}).',
      intervention: 'Deeper, faster countermovement in jumps without a ball; lower-limb power training.',
    },
  },
  drill: 'deeper-dip',
  retest: { measure: 'knee.flexPeak', afterDays: 28 },
  loads: ['jumping', 'trunk', 'effort'],
  effects: [
    { condition: 'anterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'posterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'multidirectional-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'rotator-cuff', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'superior-labrum', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'acromioclavicular-joint', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'elbow-ulnar-collateral-ligament', effect: 'keep', change: '', unsafeFor: [] },
  ],
  sources: ['okazaki2015', 'knudson1993', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
