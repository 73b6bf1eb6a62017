import type { RuleEntry } from '../../ruleEntry.ts';

export const singleLegSquatNotMet = {
  id: 'any/single-leg-squat-not-met',
  kind: 'intervention',
  movement: 'any',
  phase: 'session',
  region: 'knee',
  all: [{ measure: 'squat.singleLegGrade', comparator: 'is', threshold: 'not-met', unit: null }],
  finding: 'The single-leg squat on the {side} leg was not met.',
  intervention:
    'Control first: squat to a high seat on one leg with a hand on the wall, 3 sets of 6, three times a week; lower the seat as it gets steady.',
  retest: { measure: 'squat.singleLegGrade', afterDays: 28 },
  loads: ['leg-strength', 'practice'],
  effects: [],
  sources: ['convention'],
  evidence: 'expert',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
