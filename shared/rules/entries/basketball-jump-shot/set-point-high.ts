import type { RuleEntry } from '../../ruleEntry.ts';

export const setPointHigh = {
  id: 'basketball-jump-shot/set-point-high',
  kind: 'confirmation',
  movement: 'basketball-jump-shot',
  phase: 'stability',
  region: 'shoulder',
  all: [{ measure: 'arm.elevation', comparator: '>=', threshold: 80, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'You set the ball high enough: your upper arm is at {value}. Keep it there.',
      intervention: '',
    },
    practitioner: {
      finding: 'The set point is near or above shoulder height: {value}. No change needed.',
      intervention: '',
    },
    clinician: {
      finding: 'Humeral elevation at set point adequate: {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['okazaki2015', 'okazaki2018', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
