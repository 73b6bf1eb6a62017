import type { RuleEntry } from '../../ruleEntry.ts';

export const noBrakingStep = {
  id: 'sprint-cut/no-braking-step',
  kind: 'intervention',
  movement: 'sprint-cut',
  phase: 'penultimate-contact',
  region: 'knee',
  all: [{ measure: 'cut.brakingStep', comparator: 'is', threshold: false, unit: null }],
  finding: 'There is no braking on the step before the plant.',
  intervention: 'Planned slowing-down runs and slow-lowering leg strength: 3 sets of 5, twice a week.',
  retest: { measure: 'cut.brakingStep', afterDays: 42 },
  loads: ['running', 'leg-strength', 'effort'],
  effects: [],
  sources: ['dosSantos2021', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
