import type { RuleEntry } from '../../ruleEntry.ts';

export const touchesUsual = {
  id: 'any/touches-usual',
  kind: 'confirmation',
  movement: 'any',
  phase: 'profile',
  region: 'shoulder',
  all: [{ measure: 'ckc.touches', comparator: '>=', threshold: { female: 18, male: 22 }, unit: '{touches}' }],
  wording: {
    athlete: {
      finding: 'You made as many hand touches as college athletes usually do: {value}. Keep it up.',
      intervention: '',
    },
    practitioner: {
      finding: 'Closed-chain touches in the usual range of college athletes: {value}. No change needed.',
      intervention: '',
    },
    clinician: {
      finding: 'Closed-chain upper-limb touches within the college reference: {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['pontillo2020'],
  evidence: 'limited',
  basis: 'derived',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
