import type { RuleEntry } from '../../ruleEntry.ts';

export const trunkForwardRelease = {
  id: 'handball-jump-throw/trunk-forward-release',
  kind: 'confirmation',
  movement: 'handball-jump-throw',
  phase: 'release',
  region: 'whole-body',
  all: [{ measure: 'trunk.lean', comparator: '>=', threshold: 0, unit: 'deg' }],
  finding: 'The trunk has come forward by release: {value}. No change needed.',
  intervention: '',
  retest: null,
  loads: [],
  effects: [],
  sources: ['wagner2010', 'serrien2015', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
