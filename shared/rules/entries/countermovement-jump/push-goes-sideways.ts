import type { RuleEntry } from '../../ruleEntry.ts';

export const pushGoesSideways = {
  id: 'countermovement-jump/push-goes-sideways',
  kind: 'intervention',
  movement: 'countermovement-jump',
  phase: 'propulsion',
  region: 'knee',
  all: [{ measure: 'takeoff.horizontalVelocity', comparator: 'outside', threshold: [-0.4, 0.4], unit: 'm/s' }],
  finding: 'The push carries the body forward or back: {value} at take-off, some 20 cm by landing.',
  intervention: 'Jumps on a marked spot at half effort, eyes ahead: 3 sets of 4, twice a week.',
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
