import type { RuleEntry } from '../../ruleEntry.ts';

export const littleHeight = {
  id: 'volleyball-spike/little-height',
  kind: 'intervention',
  movement: 'volleyball-spike',
  phase: 'take-off',
  region: 'whole-body',
  all: [{ measure: 'takeoff.verticalVelocity', comparator: '<', threshold: 2.2, unit: 'm/s' }],
  finding: 'Little height comes from the take-off: {value} upward, worth less than 25 cm of rise.',
  intervention: 'Leg strength first, 3 sets of 6, twice a week for eight weeks; then approach jumps without a ball.',
  retest: { measure: 'takeoff.verticalVelocity', afterDays: 56 },
  loads: ['leg-strength', 'jumping', 'trunk', 'effort'],
  effects: [
    { condition: 'anterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'posterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'multidirectional-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'rotator-cuff', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'superior-labrum', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'acromioclavicular-joint', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'elbow-ulnar-collateral-ligament', effect: 'keep', change: '', unsafeFor: [] },
  ],
  sources: ['freeFlight', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
