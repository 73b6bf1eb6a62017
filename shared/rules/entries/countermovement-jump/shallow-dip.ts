import type { RuleEntry } from '../../ruleEntry.ts';

export const shallowDip = {
  id: 'countermovement-jump/shallow-dip',
  kind: 'intervention',
  movement: 'countermovement-jump',
  phase: 'countermovement',
  region: 'knee',
  all: [{ measure: 'knee.flexPeak', comparator: '<', threshold: 60, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'You dip only a little before you jump: your {side} knee bends to {value}.',
      intervention: 'Practise easy jumps with a deeper dip that stays quick.',
    },
    practitioner: {
      finding: 'Shallow dip: the {side} knee bends to {value}.',
      intervention: 'A deeper, still quick dip in submaximal jumps.',
    },
    clinician: {
      finding: 'Shallow countermovement, {side}: knee flexion {value} (criterion below {threshold}).',
      intervention: 'Submaximal jumps with a deeper countermovement at maintained speed.',
    },
  },
  drill: 'deeper-dip',
  retest: { measure: 'knee.flexPeak', afterDays: 28 },
  loads: ['jumping', 'effort'],
  effects: [],
  sources: ['convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
