import type { RuleEntry } from '../../ruleEntry.ts';

export const pushGoesUp = {
  id: 'countermovement-jump/push-goes-up',
  kind: 'confirmation',
  movement: 'countermovement-jump',
  phase: 'propulsion',
  region: 'knee',
  all: [{ measure: 'takeoff.horizontalVelocity', comparator: 'between', threshold: [-0.4, 0.4], unit: 'm/s' }],
  finding: 'The push goes straight up: {value} forward. No change needed.',
  intervention: '',
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
