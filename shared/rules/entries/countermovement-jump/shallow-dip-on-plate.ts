import type { RuleEntry } from '../../ruleEntry.ts';

export const shallowDipOnPlate = {
  id: 'countermovement-jump/shallow-dip-on-plate',
  kind: 'intervention',
  movement: 'countermovement-jump',
  phase: 'countermovement',
  region: 'knee',
  all: [{ measure: 'jump.countermovementDepth', comparator: '<', threshold: 20, unit: 'cm' }],
  finding: 'Shallow dip: the centre of mass goes down {value}.',
  intervention: 'A deeper, still quick dip in submaximal jumps: 3 sets of 4, twice a week.',
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
