import type { RuleEntry } from '../../ruleEntry.ts';

export const trunkUpright = {
  id: 'basketball-jump-shot/trunk-upright',
  kind: 'confirmation',
  movement: 'basketball-jump-shot',
  phase: 'stability',
  region: 'whole-body',
  all: [{ measure: 'trunk.lean', comparator: 'between', threshold: [-10, 10], unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your upper body is upright while you set the ball: {value}. Keep it that way.',
      intervention: '',
    },
    practitioner: {
      finding: 'The trunk is upright while the ball is set: {value}. No change needed.',
      intervention: '',
    },
    clinician: {
      finding: 'Trunk inclination within {threshold}: {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['okazaki2015', 'knudson1993', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
