import type { RuleEntry } from '../../ruleEntry.ts';

export const redFlagBeforeTakingPart = {
  id: 'any/red-flag-before-taking-part',
  kind: 'referral',
  movement: 'any',
  phase: 'profile',
  region: 'whole-body',
  all: [{ measure: 'flag.preparticipation', comparator: 'is', threshold: true, unit: null }],
  wording: {
    athlete: {
      finding: 'One of your answers before the tests means a doctor should see you first.',
      intervention:
        'No hard tests and no hard training until a doctor has seen you. If you feel ill now, call emergency services.',
    },
    practitioner: {
      finding: 'A red flag is recorded in the questions asked before taking part.',
      intervention:
        'Hold maximal tests and hard sessions until a physician has seen the athlete; symptoms now mean emergency services.',
    },
    clinician: {
      finding: 'Positive red-flag item on pre-participation screening.',
      intervention:
        'Defer maximal testing and hard sessions pending physician review; current symptoms warrant emergency services.',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['maron2014', 'finucane2020'],
  evidence: 'moderate',
  basis: 'published',
  defersTo: ['a sports or family physician', 'emergency services'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
