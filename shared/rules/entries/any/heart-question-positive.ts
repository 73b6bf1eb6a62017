import type { RuleEntry } from '../../ruleEntry.ts';

export const heartQuestionPositive = {
  id: 'any/heart-question-positive',
  kind: 'referral',
  movement: 'any',
  phase: 'profile',
  region: 'whole-body',
  all: [{ measure: 'flag.cardiac', comparator: 'is', threshold: true, unit: null }],
  finding: 'A heart question before taking part was positive.',
  intervention: 'Hold maximal tests and hard sessions until medical review; symptoms now mean emergency services.',
  retest: null,
  loads: [],
  effects: [],
  sources: ['maron2014'],
  evidence: 'moderate',
  basis: 'published',
  defersTo: ['a physician or cardiologist', 'emergency services'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
