import type { RuleEntry } from '../../ruleEntry.ts';

export const trunkWaitsInStride = {
  id: 'overhead-throw/trunk-waits-in-stride',
  kind: 'confirmation',
  movement: 'overhead-throw',
  phase: 'stride',
  region: 'whole-body',
  all: [{ measure: 'trunk.lean', comparator: '<=', threshold: 25, unit: 'deg' }],
  finding: 'The trunk waits for the front foot: {value} at most. No change needed.',
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
