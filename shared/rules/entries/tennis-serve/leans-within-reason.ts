import type { RuleEntry } from '../../ruleEntry.ts';

export const leansWithinReason = {
  id: 'tennis-serve/leans-within-reason',
  kind: 'confirmation',
  movement: 'tennis-serve',
  phase: 'acceleration',
  region: 'whole-body',
  all: [{ measure: 'trunk.contralateralLean', comparator: '<=', threshold: 45, unit: 'deg' }],
  finding: 'The sideways lean on the way up is moderate: {value}. No change needed.',
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
