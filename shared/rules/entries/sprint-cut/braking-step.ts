import type { RuleEntry } from '../../ruleEntry.ts';

export const brakingStep = {
  id: 'sprint-cut/braking-step',
  kind: 'confirmation',
  movement: 'sprint-cut',
  phase: 'penultimate-contact',
  region: 'knee',
  all: [{ measure: 'cut.brakingStep', comparator: 'is', threshold: true, unit: null }],
  wording: {
    athlete: { finding: 'You brake on the step before you turn. Keep it that way.', intervention: '' },
    practitioner: { finding: 'The step before the plant brakes. No change needed.', intervention: '' },
    clinician: { finding: 'Braking on the penultimate step present. No intervention indicated.', intervention: '' },
  },
  drill: null,
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
