import type { RuleEntry } from '../../ruleEntry.ts';

export const touchesFew = {
  id: 'any/touches-few',
  kind: 'intervention',
  movement: 'any',
  phase: 'profile',
  region: 'shoulder',
  all: [{ measure: 'ckc.touches', comparator: '<', threshold: { female: 18, male: 22 }, unit: '{touches}' }],
  wording: {
    athlete: {
      finding: 'You made fewer hand touches than college athletes usually do: {value}, below {threshold}.',
      intervention: 'Hold yourself on your hands: first on a wall, then on a bench, then on the floor.',
    },
    practitioner: {
      finding: 'Fewer closed-chain touches than usual in college athletes: {value}, below {threshold}.',
      intervention:
        'Support on the hands in steps: wall, incline, floor; three practice sessions before the next count.',
    },
    clinician: {
      finding: 'Closed-chain upper-limb touches: {value}, below the college reference of {threshold}.',
      intervention: 'Graded closed-chain support: wall, incline, floor; three familiarisation sessions before re-test.',
    },
  },
  drill: 'hand-support',
  retest: { measure: 'ckc.touches', afterDays: 28 },
  loads: ['arm-support', 'practice'],
  effects: [
    {
      condition: 'pregnancy',
      effect: 'replace',
      change: 'Wall or incline only, and stop with doming or symptoms.',
      unsafeFor: [
        'posterior-shoulder-instability',
        'multidirectional-shoulder-instability',
        'anterior-shoulder-instability',
      ],
    },
  ],
  sources: ['pontillo2020', 'pontillo2014', 'teixeira2021'],
  evidence: 'limited',
  basis: 'derived',
  defersTo: ['a qualified coach, within scope', 'a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
