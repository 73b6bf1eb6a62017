import type { RuleEntry } from '../../ruleEntry.ts';

export const singleLegSquatNotMet = {
  id: 'any/single-leg-squat-not-met',
  kind: 'intervention',
  movement: 'any',
  phase: 'session',
  region: 'knee',
  all: [{ measure: 'squat.singleLegGrade', comparator: 'is', threshold: 'not-met', unit: null }],
  wording: {
    athlete: {
      finding: 'The squat on your {side} leg did not work yet.',
      intervention: 'Sit down to a high seat on one leg with a hand on the wall. Use a lower seat as you get steady.',
    },
    practitioner: {
      finding: 'The single-leg squat on the {side} leg was not met.',
      intervention:
        'Control first: squat to a high seat on one leg with a hand on the wall; lower the seat as it gets steady.',
    },
    clinician: {
      finding: 'Single-leg squat, {side}: standard not met.',
      intervention:
        'Motor control first: assisted single-leg squat to a high seat; lower the seat as control improves.',
    },
  },
  drill: 'seat-squat-one-leg',
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
