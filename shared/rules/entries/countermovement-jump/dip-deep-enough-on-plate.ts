import type { RuleEntry } from '../../ruleEntry.ts';

export const dipDeepEnoughOnPlate = {
  id: 'countermovement-jump/dip-deep-enough-on-plate',
  kind: 'confirmation',
  movement: 'countermovement-jump',
  phase: 'countermovement',
  region: 'knee',
  all: [{ measure: 'jump.countermovementDepth', comparator: '>=', threshold: 20, unit: 'cm' }],
  wording: {
    athlete: { finding: 'You dip deep enough before you jump: {value}. Keep it that way.', intervention: '' },
    practitioner: { finding: 'The centre of mass goes down {value} in the dip. No change needed.', intervention: '' },
    clinician: { finding: 'Countermovement depth adequate: {value}. No intervention indicated.', intervention: '' },
  },
  drill: null,
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
