import type { RuleEntry } from '../../ruleEntry.ts';

export const lungeEven = {
  id: 'any/lunge-even',
  kind: 'confirmation',
  movement: 'any',
  phase: 'profile',
  region: 'ankle',
  all: [{ measure: 'wblt.diff', comparator: '<', threshold: 1.5, unit: 'cm' }],
  wording: {
    athlete: { finding: 'Your ankles bend alike: {value} apart. Keep it up.', intervention: '' },
    practitioner: { finding: 'The ankles bend alike under weight: {value} apart. No change needed.', intervention: '' },
    clinician: {
      finding: 'Weight-bearing dorsiflexion symmetric: difference {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['chisholm2012'],
  evidence: 'limited',
  basis: 'published',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
