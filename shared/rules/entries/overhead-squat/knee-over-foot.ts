import type { RuleEntry } from '../../ruleEntry.ts';

export const kneeOverFoot = {
  id: 'overhead-squat/knee-over-foot',
  kind: 'confirmation',
  movement: 'overhead-squat',
  phase: 'ascent',
  region: 'knee',
  all: [{ measure: 'fppa', comparator: '<=', threshold: 10, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your {side} knee stays over your foot on the way up: {value}. Keep it that way.',
      intervention: '',
    },
    practitioner: {
      finding: 'The {side} knee stays over the foot on the way up: {value}. No change needed.',
      intervention: '',
    },
    clinician: {
      finding:
        'Frontal-plane projection angle on the ascent within the convention, {side}: {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['herrington2010', 'munro2012', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
