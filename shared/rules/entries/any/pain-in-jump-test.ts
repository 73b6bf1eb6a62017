import type { RuleEntry } from '../../ruleEntry.ts';

/** A jump test loads the whole body and where it hurt is not asked, so nothing is advised until it has been seen. */
export const painInJumpTest = {
  id: 'any/pain-in-jump-test',
  kind: 'referral',
  movement: 'any',
  phase: 'session',
  region: 'whole-body',
  all: [{ measure: 'pain.jumpTest', comparator: '>=', threshold: 1, unit: '{score}' }],
  wording: {
    athlete: {
      finding: 'Jumping hurt: {value}.',
      intervention: 'Stop jumping. Say where it hurts. Do not train through it, and have it looked at.',
    },
    practitioner: {
      finding: 'Pain {value} in a jump test.',
      intervention: 'Stop jumping, write down site and side, do not load it, and arrange for it to be seen.',
    },
    clinician: {
      finding: 'Pain {value} on jump testing.',
      intervention: 'Discontinue jumping, record site and side, unload, and arrange assessment.',
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
