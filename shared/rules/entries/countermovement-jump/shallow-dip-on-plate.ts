import type { RuleEntry } from '../../ruleEntry.ts';

export const shallowDipOnPlate = {
  id: 'countermovement-jump/shallow-dip-on-plate',
  kind: 'intervention',
  movement: 'countermovement-jump',
  phase: 'countermovement',
  region: 'knee',
  all: [{ measure: 'jump.countermovementDepth', comparator: '<', threshold: 20, unit: 'cm' }],
  wording: {
    athlete: {
      finding: 'You dip only a little before you jump: your body goes down {value}.',
      intervention: 'Practise easy jumps with a deeper dip that stays quick.',
    },
    practitioner: {
      finding: 'Shallow dip: the centre of mass goes down {value}.',
      intervention: 'A deeper, still quick dip in submaximal jumps.',
    },
    clinician: {
      finding: 'Shallow countermovement: centre-of-mass displacement {value} (criterion below {threshold}).',
      intervention: 'Submaximal jumps with a deeper countermovement at maintained speed.',
    },
  },
  drill: 'deeper-dip',
  retest: { measure: 'jump.countermovementDepth', afterDays: 28 },
  loads: ['jumping', 'effort'],
  effects: [],
  sources: ['convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
