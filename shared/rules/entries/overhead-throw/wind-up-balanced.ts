import type { RuleEntry } from '../../ruleEntry.ts';

export const windUpBalanced = {
  id: 'overhead-throw/wind-up-balanced',
  kind: 'confirmation',
  movement: 'overhead-throw',
  phase: 'wind-up',
  region: 'whole-body',
  all: [{ measure: 'trunk.lean', comparator: 'between', threshold: [-15, 15], unit: 'deg' }],
  wording: {
    athlete: { finding: 'Your upper body is upright as you wind up: {value}. Keep it that way.', intervention: '' },
    practitioner: { finding: 'The trunk is upright in the wind-up: {value}. No change needed.', intervention: '' },
    clinician: {
      finding: 'Trunk inclination in the wind-up within {threshold}: {value}. No intervention indicated.',
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
