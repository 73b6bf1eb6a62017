import type { RuleEntry } from '../../ruleEntry.ts';

export const painInUpperLimbTest = {
  id: 'any/pain-in-upper-limb-test',
  kind: 'referral',
  movement: 'any',
  phase: 'session',
  region: 'shoulder',
  all: [{ measure: 'pain.upper-limb', comparator: '>=', threshold: 1, unit: '{score}' }],
  wording: {
    athlete: {
      finding: 'A test of your arm or shoulder hurt: {value}.',
      intervention: 'Stop that test. Say where it hurts. Do not train through it, and have it looked at.',
    },
    practitioner: {
      finding: 'Pain {value} in a test of the arm or shoulder.',
      intervention: 'Stop that test, write down site and side, do not load it, and arrange for it to be seen.',
    },
    clinician: {
      finding: 'Pain {value} on an upper-limb test.',
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
