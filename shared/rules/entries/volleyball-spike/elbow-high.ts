import type { RuleEntry } from '../../ruleEntry.ts';

export const elbowHigh = {
  id: 'volleyball-spike/elbow-high',
  kind: 'confirmation',
  movement: 'volleyball-spike',
  phase: 'arm-cocking',
  region: 'shoulder',
  all: [{ measure: 'arm.elevation', comparator: '>=', threshold: 80, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your elbow is high enough as you draw your arm back: {value}. Keep it there.',
      intervention: '',
    },
    practitioner: {
      finding: 'The elbow is at the shoulder line or above as the arm is drawn back: {value}. No change needed.',
      intervention: '',
    },
    clinician: {
      finding: 'Humeral elevation in cocking adequate: {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['reeser2010', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
