import type { RuleEntry } from '../../ruleEntry.ts';

export const clearingOwnPositive = {
  id: 'any/clearing-own-positive',
  kind: 'referral',
  movement: 'any',
  phase: 'session',
  region: 'whole-body',
  all: [{ measure: 'clearing.own', comparator: 'is', threshold: true, unit: null }],
  wording: {
    athlete: {
      finding: 'A check before the tests brought on pain.',
      intervention: 'Leave out every test that loads that place, and have it looked at.',
    },
    practitioner: {
      finding: 'A clearing movement of your own battery brought on pain.',
      intervention: 'Leave out every test that loads it, write down site and side, and refer for examination.',
    },
    clinician: {
      finding: 'Positive clearing test of the practitioner’s own battery.',
      intervention: 'Omit tests that load it; refer for examination.',
    },
  },
  drill: null,
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
