import type { RuleEntry } from '../../ruleEntry.ts';

export const heightCarried = {
  id: 'handball-jump-throw/height-carried',
  kind: 'confirmation',
  movement: 'handball-jump-throw',
  phase: 'take-off',
  region: 'whole-body',
  all: [{ measure: 'takeoff.verticalVelocity', comparator: '>=', threshold: 1.8, unit: 'm/s' }],
  finding: 'The take-off gives height: {value} upward. No change needed.',
  intervention: '',
  retest: null,
  loads: [],
  effects: [],
  sources: ['freeFlight', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
