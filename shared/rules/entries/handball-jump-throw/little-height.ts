import type { RuleEntry } from '../../ruleEntry.ts';

export const littleHeight = {
  id: 'handball-jump-throw/little-height',
  kind: 'intervention',
  movement: 'handball-jump-throw',
  phase: 'take-off',
  region: 'whole-body',
  all: [{ measure: 'takeoff.verticalVelocity', comparator: '<', threshold: 1.8, unit: 'm/s' }],
  wording: {
    athlete: {
      finding: 'Your jump does not take you very high: {value} upward, less than 17 cm.',
      intervention: 'Get your legs stronger first with squats and split squats. Jumps off one foot come after that.',
    },
    practitioner: {
      finding: 'Little height comes from the take-off: {value} upward, worth less than 17 cm of rise.',
      intervention: 'Leg strength first: squats and split squats; then jumps from one foot.',
    },
    clinician: {
      finding: 'Low vertical take-off velocity: {value}, equivalent to a rise of less than 17 cm.',
      intervention: 'Lower-limb strength block (bilateral and split squat) before single-leg jump training.',
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
