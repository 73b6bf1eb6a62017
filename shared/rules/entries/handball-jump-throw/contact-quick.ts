import type { RuleEntry } from '../../ruleEntry.ts';

export const contactQuick = {
  id: 'handball-jump-throw/contact-quick',
  kind: 'confirmation',
  movement: 'handball-jump-throw',
  phase: 'take-off',
  region: 'whole-body',
  all: [{ measure: 'takeoff.contactTime', comparator: '<=', threshold: 350, unit: 'ms' }],
  finding: 'The take-off is quick: {value}. No change needed.',
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
