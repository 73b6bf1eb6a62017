import type { RuleEntry } from '../../ruleEntry.ts';

export const trunkTowardsNewDirection = {
  id: 'sprint-cut/trunk-towards-new-direction',
  kind: 'confirmation',
  movement: 'sprint-cut',
  phase: 'plant',
  region: 'whole-body',
  all: [{ measure: 'trunk.lateralLean', comparator: '<=', threshold: 15, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your upper body is not over the leg you turn on: {value}. Keep it that way.',
      intervention: '',
    },
    practitioner: {
      finding: 'The trunk is not over the plant leg in the cut: {value}. No change needed.',
      intervention: '',
    },
    clinician: {
      finding: 'Lateral trunk lean over the plant leg within the convention: {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['dosSantos2019', 'dosSantos2021', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
