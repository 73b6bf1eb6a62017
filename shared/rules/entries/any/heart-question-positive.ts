import type { RuleEntry } from '../../ruleEntry.ts';

export const heartQuestionPositive = {
  id: 'any/heart-question-positive',
  kind: 'referral',
  movement: 'any',
  phase: 'profile',
  region: 'whole-body',
  all: [{ measure: 'flag.cardiac', comparator: 'is', threshold: true, unit: null }],
  wording: {
    athlete: {
      finding: 'One of your answers about your heart means a doctor should see you first.',
      intervention:
        'No hard tests and no hard training until a doctor has seen you. If you feel ill now, call emergency services.',
    },
    practitioner: {
      finding: 'A heart question before taking part was positive.',
      intervention: 'Hold maximal tests and hard sessions until medical review; symptoms now mean emergency services.',
    },
    clinician: {
      finding: 'Positive cardiac item on pre-participation screening.',
      intervention:
        'Defer maximal testing and hard sessions pending medical review; current symptoms warrant emergency services.',
    },
  },
  drill: null,
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
