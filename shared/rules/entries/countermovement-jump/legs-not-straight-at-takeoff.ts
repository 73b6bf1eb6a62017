import type { RuleEntry } from '../../ruleEntry.ts';

export const legsNotStraightAtTakeoff = {
  id: 'countermovement-jump/legs-not-straight-at-takeoff',
  kind: 'intervention',
  movement: 'countermovement-jump',
  phase: 'propulsion',
  region: 'knee',
  all: [{ measure: 'knee.flexAtTakeoff', comparator: '>', threshold: 25, unit: 'deg' }],
  finding: 'The {side} knee is still bent at take-off: {value}.',
  intervention: 'Submaximal jumps that finish tall on the toes: 3 sets of 4, twice a week.',
  retest: { measure: 'knee.flexAtTakeoff', afterDays: 28 },
  loads: ['jumping', 'effort'],
  effects: [],
  sources: ['convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
