import type { RuleEntry } from '../../ruleEntry.ts';

export const dipDeepEnough = {
  id: 'countermovement-jump/dip-deep-enough',
  kind: 'confirmation',
  movement: 'countermovement-jump',
  phase: 'countermovement',
  region: 'knee',
  all: [{ measure: 'knee.flexPeak', comparator: '>=', threshold: 60, unit: 'deg' }],
  wording: {
    athlete: { finding: 'Your {side} knee bends enough in the dip: {value}. Keep it that way.', intervention: '' },
    practitioner: { finding: 'The {side} knee bends to {value} in the dip. No change needed.', intervention: '' },
    clinician: {
      finding: 'Countermovement knee flexion adequate, {side}: {value}. No intervention indicated.',
      intervention: '',
    },
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
