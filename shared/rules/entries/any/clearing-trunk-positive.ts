import type { RuleEntry } from '../../ruleEntry.ts';

export const clearingTrunkPositive = {
  id: 'any/clearing-trunk-positive',
  kind: 'referral',
  movement: 'any',
  phase: 'session',
  region: 'lumbosacral',
  all: [{ measure: 'clearing.trunk', comparator: 'is', threshold: true, unit: null }],
  wording: {
    athlete: {
      finding: 'A check of your back brought on pain.',
      intervention: 'Leave out every test that loads it, and have your back looked at.',
    },
    practitioner: {
      finding: 'The clearing movement of the back brought on pain.',
      intervention: 'Leave out every test that loads it, and refer for examination.',
    },
    clinician: {
      finding: 'Positive clearing test of the trunk.',
      intervention: 'Omit tests that load it; refer for examination.',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [
    {
      condition: 'low-back-pain',
      effect: 'stop',
      change: 'Change in bladder, bowel, saddle feeling or leg strength: emergency care now.',
      unsafeFor: [],
    },
  ],
  sources: ['convention'],
  evidence: 'expert',
  basis: 'convention',
  defersTo: ['a physiotherapist or athletic trainer', 'a sports or family physician'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
