import type { RuleEntry } from '../../ruleEntry.ts';

export const heightCarried = {
  id: 'volleyball-spike/height-carried',
  kind: 'confirmation',
  movement: 'volleyball-spike',
  phase: 'take-off',
  region: 'whole-body',
  all: [{ measure: 'takeoff.verticalVelocity', comparator: '>=', threshold: 2.2, unit: 'm/s' }],
  wording: {
    athlete: { finding: 'Your jump gives you height: {value} upward. Keep it that way.', intervention: '' },
    practitioner: { finding: 'The take-off gives height: {value} upward. No change needed.', intervention: '' },
    clinician: {
      finding: 'Adequate vertical take-off velocity: {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['freeFlight', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
