import type { RuleEntry } from '../../ruleEntry.ts';

export const littleHeight = {
  id: 'volleyball-spike/little-height',
  kind: 'intervention',
  movement: 'volleyball-spike',
  phase: 'take-off',
  region: 'whole-body',
  all: [{ measure: 'takeoff.verticalVelocity', comparator: '<', threshold: 2.2, unit: 'm/s' }],
  wording: {
    athlete: {
      finding: 'Your jump does not take you very high: {value} upward, less than 25 cm.',
      intervention: 'Get your legs stronger first. Jumps with a run-up, without a ball, come after that.',
    },
    practitioner: {
      finding: 'Little height comes from the take-off: {value} upward, worth less than 25 cm of rise.',
      intervention: 'Leg strength first; then approach jumps without a ball.',
    },
    clinician: {
      finding: 'Low vertical take-off velocity: {value}, equivalent to a rise of less than 25 cm.',
      intervention: 'Lower-limb strength block before approach jumps without a ball.',
    },
  },
  drill: 'leg-strength-block',
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
