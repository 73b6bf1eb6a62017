import type { RuleEntry } from '../../ruleEntry.ts';

export const painInLowerLimbTest = {
  id: 'any/pain-in-lower-limb-test',
  kind: 'referral',
  movement: 'any',
  phase: 'session',
  region: 'knee',
  all: [{ measure: 'pain.lower-limb', comparator: '>=', threshold: 1, unit: '{score}' }],
  wording: {
    athlete: {
      finding: 'A test of your leg hurt: {value}.',
      intervention: 'Stop that test. Say where it hurts. Do not train through it, and have it looked at.',
    },
    practitioner: {
      finding: 'Pain {value} in a test of the leg.',
      intervention: 'Stop that test, write down site and side, do not load it, and arrange for it to be seen.',
    },
    clinician: {
      finding: 'Pain {value} on a lower-limb test.',
      intervention: 'Discontinue the test, record site and side, unload, and arrange assessment.',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [
    {
      condition: 'bone-stress',
      effect: 'stop',
      change: 'Any pain at one spot of a bone stops impact at once, whatever the number.',
      unsafeFor: [],
    },
    {
      condition: 'patellar-tendinopathy',
      effect: 'modify',
      change: 'For a diagnosed tendon the clinician may set a ceiling, usually about 3 of 10.',
      plain: 'Your clinician may say how much it may hurt, usually about 3 of 10.',
      unsafeFor: [],
    },
  ],
  sources: ['bahr2016', 'convention'],
  evidence: 'expert',
  basis: 'convention',
  defersTo: ['a physiotherapist or athletic trainer', 'a sports or family physician'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
