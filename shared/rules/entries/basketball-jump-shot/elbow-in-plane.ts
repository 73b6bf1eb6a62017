import type { RuleEntry } from '../../ruleEntry.ts';

export const elbowInPlane = {
  id: 'basketball-jump-shot/elbow-in-plane',
  kind: 'confirmation',
  movement: 'basketball-jump-shot',
  phase: 'ball-elevation',
  region: 'shoulder',
  all: [{ measure: 'elbow.lateralDeviation', comparator: '<=', threshold: 15, unit: 'deg' }],
  finding: 'The elbow stays in the shooting plane as the ball rises: {value}. No change needed.',
  intervention: '',
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
