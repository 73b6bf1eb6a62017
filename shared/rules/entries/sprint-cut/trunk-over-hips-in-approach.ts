import type { RuleEntry } from '../../ruleEntry.ts';

export const trunkOverHipsInApproach = {
  id: 'sprint-cut/trunk-over-hips-in-approach',
  kind: 'confirmation',
  movement: 'sprint-cut',
  phase: 'approach',
  region: 'whole-body',
  all: [{ measure: 'trunk.lean', comparator: 'between', threshold: [-5, 35], unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your upper body is over your hips before you cut: {value}. Keep it that way.',
      intervention: '',
    },
    practitioner: {
      finding: 'The trunk is over the hips before the cut: {value}. No change needed.',
      intervention: '',
    },
    clinician: {
      finding: 'Trunk inclination in the approach within {threshold}: {value}. No intervention indicated.',
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
