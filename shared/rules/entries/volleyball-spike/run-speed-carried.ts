import type { RuleEntry } from '../../ruleEntry.ts';

export const runSpeedCarried = {
  id: 'volleyball-spike/run-speed-carried',
  kind: 'confirmation',
  movement: 'volleyball-spike',
  phase: 'approach',
  region: 'whole-body',
  all: [{ measure: 'takeoff.horizontalVelocity', comparator: '>=', threshold: 1.5, unit: 'm/s' }],
  wording: {
    athlete: { finding: 'You take your speed into the jump: {value}. Keep it that way.', intervention: '' },
    practitioner: {
      finding: 'Speed is carried into the jump: {value}. No change to the approach needed.',
      intervention: '',
    },
    clinician: {
      finding: 'Adequate horizontal velocity at take-off: {value}. No intervention indicated.',
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
