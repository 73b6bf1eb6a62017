import type { RuleEntry } from '../../ruleEntry.ts';

export const startBalanced = {
  id: 'tennis-serve/start-balanced',
  kind: 'confirmation',
  movement: 'tennis-serve',
  phase: 'start',
  region: 'whole-body',
  all: [{ measure: 'trunk.lean', comparator: 'between', threshold: [-15, 15], unit: 'deg' }],
  wording: {
    athlete: { finding: 'Your upper body is upright before the toss: {value}. Keep it that way.', intervention: '' },
    practitioner: { finding: 'The trunk is upright before the toss: {value}. No change needed.', intervention: '' },
    clinician: {
      finding: 'Trunk inclination before the toss within {threshold}: {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
