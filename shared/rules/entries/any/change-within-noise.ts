import type { RuleEntry } from '../../ruleEntry.ts';

export const changeWithinNoise = {
  id: 'any/change-within-noise',
  kind: 'confirmation',
  movement: 'any',
  phase: 'profile',
  region: 'whole-body',
  all: [{ measure: 'retest.changeOverMdc', comparator: '<', threshold: 1, unit: '1' }],
  wording: {
    athlete: {
      finding: 'One result changed by {value} of what the test can tell. That may be chance. Keep to your plan.',
      intervention: '',
    },
    practitioner: {
      finding: 'A result changed by {value} of its detectable change: within noise. No change of plan on it alone.',
      intervention: '',
    },
    clinician: {
      finding:
        'Change of {value} of the minimal detectable change: within measurement error. No change of plan on it alone.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['kolber2011', 'powden2015', 'reid2007'],
  evidence: 'moderate',
  basis: 'published',
  defersTo: ['a qualified coach, within scope'],
  since: '0.2.0',
  supersededBy: null,
} as const satisfies RuleEntry;
