import type { RuleEntry } from '../../ruleEntry.ts';

export const legsStraightAtTakeoff = {
  id: 'countermovement-jump/legs-straight-at-takeoff',
  kind: 'confirmation',
  movement: 'countermovement-jump',
  phase: 'propulsion',
  region: 'knee',
  all: [{ measure: 'knee.flexAtTakeoff', comparator: '<=', threshold: 25, unit: 'deg' }],
  finding: 'The {side} knee is straight at take-off: {value}. No change needed.',
  intervention: '',
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
