import type { RuleEntry } from '../../ruleEntry.ts';

export const brakingStep = {
  id: 'sprint-cut/braking-step',
  kind: 'confirmation',
  movement: 'sprint-cut',
  phase: 'penultimate-contact',
  region: 'knee',
  all: [{ measure: 'cut.brakingStep', comparator: 'is', threshold: true, unit: null }],
  finding: 'The step before the plant brakes. No change needed.',
  intervention: '',
  retest: null,
  loads: [],
  effects: [],
  sources: ['dosSantos2021', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
