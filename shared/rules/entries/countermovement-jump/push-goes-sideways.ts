import type { RuleEntry } from '../../ruleEntry.ts';

export const pushGoesSideways = {
  id: 'countermovement-jump/push-goes-sideways',
  kind: 'intervention',
  movement: 'countermovement-jump',
  phase: 'propulsion',
  region: 'knee',
  all: [{ measure: 'takeoff.horizontalVelocity', comparator: 'outside', threshold: [-0.4, 0.4], unit: 'm/s' }],
  wording: {
    athlete: {
      finding: 'You push yourself forward or back, not only up: {value}. You land some 20 cm away.',
      intervention: 'Jump on a marked spot with half your strength and look straight ahead.',
    },
    practitioner: {
      finding: 'The push carries the body forward or back: {value} at take-off, some 20 cm by landing.',
      intervention: 'Jumps on a marked spot at half effort, eyes ahead.',
    },
    clinician: {
      finding: 'Horizontal velocity at take-off outside {threshold}: {value}, some 20 cm by landing.',
      intervention: 'Submaximal vertical jumps on a marked target, gaze forward.',
    },
  },
  drill: 'jumps-on-a-spot',
  retest: { measure: 'takeoff.horizontalVelocity', afterDays: 28 },
  loads: ['jumping', 'effort'],
  effects: [],
  sources: ['freeFlight', 'convention'],
  evidence: 'convention',
  basis: 'derived',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
