import type { RuleEntry } from '../../ruleEntry.ts';

export const windUpBalanced = {
  id: 'overhead-throw/wind-up-balanced',
  kind: 'confirmation',
  movement: 'overhead-throw',
  phase: 'wind-up',
  region: 'whole-body',
  all: [{ measure: 'trunk.lean', comparator: 'between', threshold: [-15, 15], unit: 'deg' }],
  finding: 'The trunk is upright in the wind-up: {value}. No change needed.',
  intervention: '',
  retest: null,
  loads: [],
  effects: [],
  sources: ['convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
