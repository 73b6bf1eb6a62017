import type { RuleEntry } from '../../ruleEntry.ts';

export const startBalanced = {
  id: 'tennis-serve/start-balanced',
  kind: 'confirmation',
  movement: 'tennis-serve',
  phase: 'start',
  region: 'whole-body',
  all: [{ measure: 'trunk.lean', comparator: 'between', threshold: [-15, 15], unit: 'deg' }],
  finding: 'The trunk is upright before the toss: {value}. No change needed.',
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
