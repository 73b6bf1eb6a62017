import type { RuleEntry } from '../../ruleEntry.ts';

export const legDrive = {
  id: 'tennis-serve/leg-drive',
  kind: 'confirmation',
  movement: 'tennis-serve',
  phase: 'loading',
  region: 'whole-body',
  all: [{ measure: 'knee.flexPeak', comparator: '>=', threshold: 15, unit: 'deg' }],
  finding: 'The {side} knee bends clearly in loading: {value}. No change to leg drive needed.',
  intervention: '',
  retest: null,
  loads: [],
  effects: [],
  sources: ['elliott2003', 'kovacs2011', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
