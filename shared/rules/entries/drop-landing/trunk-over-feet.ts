import type { RuleEntry } from '../../ruleEntry.ts';

export const trunkOverFeet = {
  id: 'drop-landing/trunk-over-feet',
  kind: 'confirmation',
  movement: 'drop-landing',
  phase: 'stabilisation',
  region: 'whole-body',
  all: [{ measure: 'trunk.lean', comparator: 'between', threshold: [-10, 45], unit: 'deg' }],
  finding: 'The trunk comes to rest over the feet: {value} from the vertical. No change needed.',
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
