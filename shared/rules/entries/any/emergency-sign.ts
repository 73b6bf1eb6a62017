import type { RuleEntry } from '../../ruleEntry.ts';

export const emergencySign = {
  id: 'any/emergency-sign',
  kind: 'referral',
  movement: 'any',
  phase: 'session',
  region: 'whole-body',
  all: [{ measure: 'flag.emergency', comparator: 'is', threshold: true, unit: null }],
  wording: {
    athlete: {
      finding: 'There is a sign of an emergency.',
      intervention:
        'Stop now. Call emergency services or go to the emergency department now. No tests and no training.',
    },
    practitioner: {
      finding: 'An emergency sign is recorded.',
      intervention:
        'End the session. Call emergency services or send to the emergency department now. No testing and no exercise advice.',
    },
    clinician: {
      finding: 'Emergency sign recorded.',
      intervention:
        'Terminate the session; emergency services or emergency department now. No testing and no exercise advice.',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['mitchell2005', 'murphy2023', 'finucane2020'],
  evidence: 'moderate',
  basis: 'published',
  defersTo: ['emergency services'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
