import type { RuleEntry } from '../../ruleEntry.ts';

export const fewFaults = {
  id: 'sprint-cut/few-faults',
  kind: 'confirmation',
  movement: 'sprint-cut',
  phase: 'whole',
  region: 'whole-body',
  all: [{ measure: 'cut.score', comparator: '<=', threshold: 3, unit: '{points}' }],
  finding: 'Cutting technique is in the low-fault band: {value} of 11. No change needed.',
  intervention: '',
  retest: null,
  loads: [],
  effects: [],
  sources: ['dosSantos2019', 'dosSantos2021', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
