import type { RuleEntry } from '../../ruleEntry.ts';

export const shallowDip = {
  id: 'countermovement-jump/shallow-dip',
  kind: 'intervention',
  movement: 'countermovement-jump',
  phase: 'countermovement',
  region: 'knee',
  all: [{ measure: 'knee.flexPeak', comparator: '<', threshold: 60, unit: 'deg' }],
  finding: 'Shallow dip: the {side} knee bends to {value}.',
  intervention: 'A deeper, still quick dip in submaximal jumps: 3 sets of 4, twice a week.',
  retest: { measure: 'knee.flexPeak', afterDays: 28 },
  loads: ['jumping', 'effort'],
  effects: [],
  sources: ['convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
