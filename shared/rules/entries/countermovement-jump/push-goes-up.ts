import type { RuleEntry } from '../../ruleEntry.ts';

export const pushGoesUp = {
  id: 'countermovement-jump/push-goes-up',
  kind: 'confirmation',
  movement: 'countermovement-jump',
  phase: 'propulsion',
  region: 'knee',
  all: [{ measure: 'takeoff.horizontalVelocity', comparator: 'between', threshold: [-0.4, 0.4], unit: 'm/s' }],
  wording: {
    athlete: { finding: 'You push straight up: {value} forward. Keep it that way.', intervention: '' },
    practitioner: { finding: 'The push goes straight up: {value} forward. No change needed.', intervention: '' },
    clinician: {
      finding: 'Horizontal velocity at take-off within {threshold}: {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['freeFlight', 'convention'],
  evidence: 'convention',
  basis: 'derived',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
