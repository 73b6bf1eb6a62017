import type { RuleEntry } from '../../ruleEntry.ts';

export const painOverFiveInMovement = {
  id: 'any/pain-over-five-in-movement',
  kind: 'referral',
  movement: 'any',
  phase: 'session',
  region: 'whole-body',
  all: [{ measure: 'pain.nrs', comparator: '>', threshold: 5, unit: '{score}' }],
  wording: {
    athlete: {
      finding: 'The movement hurt a lot: {value}.',
      intervention: 'Stop the movement today. Have it looked at before you train it again.',
    },
    practitioner: {
      finding: 'Pain {value} during the movement.',
      intervention: 'Stop the movement today and arrange for it to be seen before the next loaded session.',
    },
    clinician: {
      finding: 'Pain {value} during the movement.',
      intervention: 'Discontinue today; assessment before the next loaded session.',
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
  ],
  sources: ['thomee1997', 'thorborg2017', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a physiotherapist or athletic trainer', 'a sports or family physician'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
