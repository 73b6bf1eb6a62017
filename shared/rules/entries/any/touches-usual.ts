import type { RuleEntry } from '../../ruleEntry.ts';

export const touchesUsual = {
  id: 'any/touches-usual',
  kind: 'confirmation',
  movement: 'any',
  phase: 'profile',
  region: 'shoulder',
  all: [{ measure: 'ckc.touches', comparator: '>=', threshold: { female: 18, male: 22 }, unit: '{touches}' }],
  finding: 'Closed-chain touches in the usual range of college athletes: {value}. No change needed.',
  intervention: '',
  retest: null,
  loads: [],
  effects: [],
  sources: ['pontillo2020'],
  evidence: 'limited',
  basis: 'derived',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
