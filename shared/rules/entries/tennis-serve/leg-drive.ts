import type { RuleEntry } from '../../ruleEntry.ts';

export const legDrive = {
  id: 'tennis-serve/leg-drive',
  kind: 'confirmation',
  movement: 'tennis-serve',
  phase: 'loading',
  region: 'whole-body',
  all: [{ measure: 'knee.flexPeak', comparator: '>=', threshold: 15, unit: 'deg' }],
  wording: {
    athlete: { finding: 'Your {side} knee bends clearly before you hit: {value}. Keep it that way.', intervention: '' },
    practitioner: {
      finding: 'The {side} knee bends clearly in loading: {value}. No change to leg drive needed.',
      intervention: '',
    },
    clinician: {
      finding: 'Knee flexion in loading adequate, {side}: {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['elliott2003', 'kovacs2011', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
