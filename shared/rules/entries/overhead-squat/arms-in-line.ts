import type { RuleEntry } from '../../ruleEntry.ts';

export const armsInLine = {
  id: 'overhead-squat/arms-in-line',
  kind: 'confirmation',
  movement: 'overhead-squat',
  phase: 'bottom',
  region: 'shoulder',
  all: [{ measure: 'squat.armDrift', comparator: '<=', threshold: 20, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your arms stay in line with your body in the squat: {value}. Keep it that way.',
      intervention: '',
    },
    practitioner: {
      finding: 'The arms stay in line with the trunk at the bottom: {value}. No change needed.',
      intervention: '',
    },
    clinician: {
      finding: 'Arms in line with the trunk at the bottom: drift {value}. No intervention indicated.',
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
