import type { RuleEntry } from '../../ruleEntry.ts';

export const heelsDown = {
  id: 'overhead-squat/heels-down',
  kind: 'confirmation',
  movement: 'overhead-squat',
  phase: 'bottom',
  region: 'ankle',
  all: [{ measure: 'squat.heelLift', comparator: 'is', threshold: false, unit: null }],
  wording: {
    athlete: { finding: 'Your heels stay down in the squat. Keep it that way.', intervention: '' },
    practitioner: { finding: 'The heels stay down at the bottom. No change needed.', intervention: '' },
    clinician: { finding: 'Heels remain in contact at the bottom. No intervention indicated.', intervention: '' },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['dill2014', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
