import type { RuleEntry } from '../../ruleEntry.ts';

export const painInWholeBodyTest = {
  id: 'any/pain-in-whole-body-test',
  kind: 'referral',
  movement: 'any',
  phase: 'session',
  region: 'whole-body',
  all: [{ measure: 'pain.whole-body', comparator: '>=', threshold: 1, unit: '{score}' }],
  wording: {
    athlete: {
      finding: 'A test hurt: {value}.',
      intervention: 'Stop that test. Say where it hurts. Do not train through it, and have it looked at.',
    },
    practitioner: {
      finding: 'Pain {value} in a test of the whole body.',
      intervention: 'Stop that test, write down site and side, do not load it, and arrange for it to be seen.',
    },
    clinician: {
      finding: 'Pain {value} on a whole-body test.',
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
