import type { RuleEntry } from '../../ruleEntry.ts';

export const clearingUpperLimbPositive = {
  id: 'any/clearing-upper-limb-positive',
  kind: 'referral',
  movement: 'any',
  phase: 'session',
  region: 'shoulder',
  all: [{ measure: 'clearing.upper-limb', comparator: 'is', threshold: true, unit: null }],
  wording: {
    athlete: {
      finding: 'A check of your shoulder brought on pain.',
      intervention: 'Leave out every test that loads it, and have your shoulder looked at.',
    },
    practitioner: {
      finding: 'The clearing movement of the shoulder brought on pain.',
      intervention: 'Leave out every test that loads it, and refer for examination.',
    },
    clinician: {
      finding: 'Positive clearing test of the upper limb.',
      intervention: 'Omit tests that load it; refer for examination.',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [
    {
      condition: 'anterior-shoulder-instability',
      effect: 'stop',
      change: 'Do not repeat the provoking position; a coach never performs apprehension tests.',
      plain: 'Do not go into that position again. Only a doctor or physiotherapist tests it.',
      unsafeFor: [],
    },
  ],
  sources: ['hegedus2012', 'convention'],
  evidence: 'expert',
  basis: 'convention',
  defersTo: ['a physiotherapist or athletic trainer', 'a sports or family physician'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
