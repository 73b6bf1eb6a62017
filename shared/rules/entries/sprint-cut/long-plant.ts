import type { RuleEntry } from '../../ruleEntry.ts';

export const longPlant = {
  id: 'sprint-cut/long-plant',
  kind: 'intervention',
  movement: 'sprint-cut',
  phase: 'push-off',
  region: 'knee',
  all: [{ measure: 'takeoff.contactTime', comparator: '>', threshold: 350, unit: 'ms' }],
  finding: 'The planting foot stays long on the floor: {value}.',
  intervention: 'Planned quick cuts at low speed, then leg strength: 3 sets of 5, twice a week.',
  retest: { measure: 'takeoff.contactTime', afterDays: 42 },
  loads: ['running', 'leg-strength', 'effort'],
  effects: [],
  sources: ['convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
