import type { RuleEntry } from '../../ruleEntry.ts';

export const tossUpright = {
  id: 'tennis-serve/toss-upright',
  kind: 'confirmation',
  movement: 'tennis-serve',
  phase: 'release',
  region: 'shoulder',
  all: [{ measure: 'ball.releaseAngle', comparator: '>=', threshold: 70, unit: 'deg' }],
  wording: {
    athlete: { finding: 'Your toss goes up straight enough: {value}. Keep it that way.', intervention: '' },
    practitioner: {
      finding: 'The toss goes up straight enough: {value} above the horizontal. No change needed.',
      intervention: '',
    },
    clinician: {
      finding: 'Toss angle adequate: {value} above the horizontal. No intervention indicated.',
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
