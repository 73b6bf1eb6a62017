import type { RuleEntry } from '../../ruleEntry.ts';

export const bentKneeAtContact = {
  id: 'drop-landing/bent-knee-at-contact',
  kind: 'confirmation',
  movement: 'drop-landing',
  phase: 'initial-contact',
  region: 'knee',
  all: [{ measure: 'knee.flexAtContact', comparator: '>=', threshold: 30, unit: 'deg' }],
  finding: 'The {side} knee is bent as the foot lands: {value}. No change needed.',
  intervention: '',
  retest: null,
  loads: [],
  effects: [],
  sources: ['padua2009', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
