import type { RuleEntry } from '../../ruleEntry.ts';

export const noBrakingStep = {
  id: 'sprint-cut/no-braking-step',
  kind: 'intervention',
  movement: 'sprint-cut',
  phase: 'penultimate-contact',
  region: 'knee',
  all: [{ measure: 'cut.brakingStep', comparator: 'is', threshold: false, unit: null }],
  wording: {
    athlete: {
      finding: 'You do not brake on the step before you turn.',
      intervention: 'Run and slow down at a place you know beforehand. Train your legs by lowering slowly.',
    },
    practitioner: {
      finding: 'There is no braking on the step before the plant.',
      intervention: 'Planned slowing-down runs and slow-lowering leg strength.',
    },
    clinician: {
      finding: 'Absent braking on the penultimate step.',
      intervention: 'Preplanned deceleration runs; eccentric lower-limb strengthening.',
    },
  },
  drill: 'slowing-down',
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
