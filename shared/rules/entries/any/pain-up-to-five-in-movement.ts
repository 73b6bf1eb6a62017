import type { RuleEntry } from '../../ruleEntry.ts';

export const painUpToFiveInMovement = {
  id: 'any/pain-up-to-five-in-movement',
  kind: 'caution',
  movement: 'any',
  phase: 'session',
  region: 'whole-body',
  all: [{ measure: 'pain.nrs', comparator: 'between', threshold: [1, 5], unit: '{score}' }],
  wording: {
    athlete: {
      finding: 'The movement hurt: {value}.',
      intervention: 'Say where it hurts and do less today. Have it looked at if it comes back or gets worse.',
    },
    practitioner: {
      finding: 'Pain {value} during the movement.',
      intervention: 'Find out where it hurts, lower the load today, and have it looked at if it comes back or rises.',
    },
    clinician: {
      finding: 'Pain {value} during the movement.',
      intervention: 'Localise, reduce load today, assess if recurrent or rising.',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['thomee1997', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
