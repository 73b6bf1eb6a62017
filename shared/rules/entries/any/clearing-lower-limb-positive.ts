import type { RuleEntry } from '../../ruleEntry.ts';

export const clearingLowerLimbPositive = {
  id: 'any/clearing-lower-limb-positive',
  kind: 'referral',
  movement: 'any',
  phase: 'session',
  region: 'knee',
  all: [{ measure: 'clearing.lower-limb', comparator: 'is', threshold: true, unit: null }],
  wording: {
    athlete: {
      finding: 'A check of your leg brought on pain.',
      intervention: 'Leave out every test that loads it, and have your leg looked at.',
    },
    practitioner: {
      finding: 'The clearing movement of the leg brought on pain.',
      intervention: 'Leave out every test that loads it, and refer for examination.',
    },
    clinician: {
      finding: 'Positive clearing test of the lower limb.',
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
