import type { RuleEntry } from '../../ruleEntry.ts';

export const elbowInPlane = {
  id: 'basketball-jump-shot/elbow-in-plane',
  kind: 'confirmation',
  movement: 'basketball-jump-shot',
  phase: 'ball-elevation',
  region: 'shoulder',
  all: [{ measure: 'elbow.lateralDeviation', comparator: '<=', threshold: 15, unit: 'deg' }],
  wording: {
    athlete: { finding: 'Your elbow stays under the ball as it rises: {value}. Keep it there.', intervention: '' },
    practitioner: {
      finding: 'The elbow stays in the shooting plane as the ball rises: {value}. No change needed.',
      intervention: '',
    },
    clinician: { finding: 'Elbow within the shooting plane: {value}. No intervention indicated.', intervention: '' },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['okazaki2015', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
