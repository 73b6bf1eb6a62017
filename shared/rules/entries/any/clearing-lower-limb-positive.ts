import type { RuleEntry } from '../../ruleEntry.ts';

export const clearingLowerLimbPositive = {
  id: 'any/clearing-lower-limb-positive',
  kind: 'referral',
  movement: 'any',
  phase: 'session',
  region: 'knee',
  all: [{ measure: 'clearing.lower-limb', comparator: 'is', threshold: true, unit: null }],
  finding: 'The clearing movement of the leg brought on pain.',
  intervention: 'Leave out every test that loads it, and refer for examination.',
  retest: null,
  loads: [],
  effects: [],
  sources: ['convention'],
  evidence: 'expert',
  basis: 'convention',
  defersTo: ['a physiotherapist or athletic trainer', 'a sports or family physician'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
