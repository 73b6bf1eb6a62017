import type { RuleEntry } from '../../ruleEntry.ts';

export const suspectedConcussion = {
  id: 'any/suspected-concussion',
  kind: 'referral',
  movement: 'any',
  phase: 'session',
  region: 'whole-body',
  all: [{ measure: 'flag.suspectedConcussion', comparator: 'is', threshold: true, unit: null }],
  wording: {
    athlete: {
      finding: 'You may have a concussion (a shaken brain).',
      intervention: 'Stop for today and see a doctor. You go back step by step, and only when the doctor says so.',
    },
    practitioner: {
      finding: 'Concussion is suspected.',
      intervention: 'Remove from activity for the day; medical assessment; graded return only on advice.',
    },
    clinician: {
      finding: 'Suspected concussion.',
      intervention: 'Remove from activity for the day; medical assessment; graded return on advice only.',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['mccrory2017', 'patricios2023'],
  evidence: 'strong',
  basis: 'published',
  defersTo: ['a sports or family physician', 'emergency services'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
