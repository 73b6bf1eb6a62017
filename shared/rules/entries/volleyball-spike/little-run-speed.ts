import type { RuleEntry } from '../../ruleEntry.ts';

export const littleRunSpeed = {
  id: 'volleyball-spike/little-run-speed',
  kind: 'intervention',
  movement: 'volleyball-spike',
  phase: 'approach',
  region: 'whole-body',
  all: [{ measure: 'takeoff.horizontalVelocity', comparator: '<', threshold: 1.5, unit: 'm/s' }],
  wording: {
    athlete: {
      finding: 'You slow down before you jump: {value} forward.',
      intervention: 'Practise your three steps, slow then quick, without a ball.',
    },
    practitioner: {
      finding: 'Little speed is carried into the jump: {value}.',
      intervention: 'Three-step approach, slow then quick, without a ball.',
    },
    clinician: {
      finding: 'Low horizontal velocity at take-off: {value} (criterion below {threshold}).',
      intervention: 'Three-step approach, slow to fast, without a ball.',
    },
  },
  drill: 'quick-approach',
  retest: { measure: 'takeoff.horizontalVelocity', afterDays: 28 },
  loads: ['running', 'jumping', 'trunk', 'effort'],
  effects: [
    { condition: 'anterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'posterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'multidirectional-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'rotator-cuff', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'superior-labrum', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'acromioclavicular-joint', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'elbow-ulnar-collateral-ligament', effect: 'keep', change: '', unsafeFor: [] },
  ],
  sources: ['convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
