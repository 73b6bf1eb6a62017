import type { RuleEntry } from '../../ruleEntry.ts';

export const landsOnTheSpot = {
  id: 'basketball-jump-shot/lands-on-the-spot',
  kind: 'confirmation',
  movement: 'basketball-jump-shot',
  phase: 'inertia',
  region: 'whole-body',
  all: [{ measure: 'landing.drift', comparator: 'between', threshold: [-30, 30], unit: 'cm' }],
  wording: {
    athlete: { finding: 'You land where you jumped: {value} away. Keep it that way.', intervention: '' },
    practitioner: { finding: 'Lands where the jump began: {value} away. No change needed.', intervention: '' },
    clinician: {
      finding: 'Landing displacement within {threshold}: {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['knudson1993', 'okazaki2015', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
