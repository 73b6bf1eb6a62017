import type { RuleEntry } from '../../ruleEntry.ts';

export const painInHeadOrNeckTest = {
  id: 'any/pain-in-head-or-neck-test',
  kind: 'referral',
  movement: 'any',
  phase: 'session',
  region: 'neck',
  all: [{ measure: 'pain.head-neck', comparator: '>=', threshold: 1, unit: '{score}' }],
  wording: {
    athlete: {
      finding: 'A test of your head or neck hurt: {value}.',
      intervention: 'Stop that test. Say where it hurts. Do not train through it, and have it looked at.',
    },
    practitioner: {
      finding: 'Pain {value} in a test of the head or neck.',
      intervention: 'Stop that test, write down site and side, do not load it, and arrange for it to be seen.',
    },
    clinician: {
      finding: 'Pain {value} on a test of the head or neck.',
      intervention: 'Discontinue the test, record site and side, unload, and arrange assessment.',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['bahr2016', 'convention'],
  evidence: 'expert',
  basis: 'convention',
  defersTo: ['a physiotherapist or athletic trainer', 'a sports or family physician'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
