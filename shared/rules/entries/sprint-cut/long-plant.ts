import type { RuleEntry } from '../../ruleEntry.ts';

export const longPlant = {
  id: 'sprint-cut/long-plant',
  kind: 'intervention',
  movement: 'sprint-cut',
  phase: 'push-off',
  region: 'knee',
  all: [{ measure: 'takeoff.contactTime', comparator: '>', threshold: 350, unit: 'ms' }],
  wording: {
    athlete: {
      finding: 'The foot you turn on stays on the floor for a long time: {value}.',
      intervention: 'Make quick, easy cuts that you know beforehand. Then train leg strength.',
    },
    practitioner: {
      finding: 'The planting foot stays long on the floor: {value}.',
      intervention: 'Planned quick cuts at low speed, then leg strength.',
    },
    clinician: {
      finding: 'Prolonged plant contact: {value} (criterion above {threshold}).',
      intervention: 'Preplanned quick cuts at low speed, then lower-limb strengthening.',
    },
  },
  drill: 'planned-cuts',
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
