import type { RuleEntry } from '../../ruleEntry.ts';

export const painInUpperLimbTest = {
  id: 'any/pain-in-upper-limb-test',
  kind: 'referral',
  movement: 'any',
  phase: 'session',
  region: 'shoulder',
  all: [{ measure: 'pain.upper-limb', comparator: '>=', threshold: 1, unit: '{score}' }],
  finding: 'Pain {value} in a test of the arm or shoulder.',
  intervention: 'Stop that test, write down site and side, do not load it, and arrange for it to be seen.',
  retest: null,
  loads: [],
  effects: [],
  sources: ['bahr2016', 'convention'],
  evidence: 'expert',
  basis: 'convention',
  defersTo: ['a physiotherapist or athletic trainer', 'a sports or family physician'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
