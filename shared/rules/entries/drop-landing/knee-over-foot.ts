import type { RuleEntry } from '../../ruleEntry.ts';

export const kneeOverFoot = {
  id: 'drop-landing/knee-over-foot',
  kind: 'confirmation',
  movement: 'drop-landing',
  phase: 'absorption',
  region: 'knee',
  all: [{ measure: 'fppa', comparator: '<=', threshold: { female: 13, male: 8 }, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your {side} knee stays over your foot when you land: {value}. Keep it that way.',
      intervention: '',
    },
    practitioner: {
      finding: 'The {side} knee stays over the foot on landing: {value}. No change needed.',
      intervention: '',
    },
    clinician: {
      finding: 'Frontal-plane projection angle within {threshold}, {side}: {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['herrington2010', 'munro2012', 'schurr2017', 'straub2022'],
  evidence: 'limited',
  basis: 'published',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
