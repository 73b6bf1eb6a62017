import type { RuleEntry } from '../../ruleEntry.ts';

export const quickPlant = {
  id: 'sprint-cut/quick-plant',
  kind: 'confirmation',
  movement: 'sprint-cut',
  phase: 'push-off',
  region: 'knee',
  all: [{ measure: 'takeoff.contactTime', comparator: '<=', threshold: 350, unit: 'ms' }],
  finding: 'The planting foot leaves quickly: {value}. No change needed.',
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
