import type { RuleEntry } from '../../ruleEntry.ts';

export const throwingLoadSteady = {
  id: 'any/throwing-load-steady',
  kind: 'confirmation',
  movement: 'any',
  phase: 'profile',
  region: 'shoulder',
  all: [{ measure: 'throw.weeklyRise', comparator: '<', threshold: 20, unit: '%' }],
  wording: {
    athlete: {
      finding: 'You have not thrown much more than in your last four weeks: {value}. Keep it that way.',
      intervention: '',
    },
    practitioner: {
      finding: 'Throwing has not risen by 20 % or more over the last four weeks: {value}. No change needed.',
      intervention: '',
    },
    clinician: {
      finding: 'Throwing load change {value} over four weeks. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['moller2017'],
  evidence: 'moderate',
  basis: 'published',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
