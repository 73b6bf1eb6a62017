import type { RuleEntry } from '../../ruleEntry.ts';

export const trunkFollowsShin = {
  id: 'overhead-squat/trunk-follows-shin',
  kind: 'confirmation',
  movement: 'overhead-squat',
  phase: 'descent',
  region: 'whole-body',
  all: [{ measure: 'squat.trunkTibiaDiff', comparator: '<=', threshold: 10, unit: 'deg' }],
  wording: {
    athlete: { finding: 'Your upper body stays in line with your shins: {value}. Keep it that way.', intervention: '' },
    practitioner: { finding: 'The trunk stays in line with the shin: {value}. No change needed.', intervention: '' },
    clinician: {
      finding: 'Trunk in line with the shin: difference {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['dill2014', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
