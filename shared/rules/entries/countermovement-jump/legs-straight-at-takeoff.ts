import type { RuleEntry } from '../../ruleEntry.ts';

export const legsStraightAtTakeoff = {
  id: 'countermovement-jump/legs-straight-at-takeoff',
  kind: 'confirmation',
  movement: 'countermovement-jump',
  phase: 'propulsion',
  region: 'knee',
  all: [{ measure: 'knee.flexAtTakeoff', comparator: '<=', threshold: 25, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your {side} knee is straight when you leave the floor: {value}. Keep it that way.',
      intervention: '',
    },
    practitioner: { finding: 'The {side} knee is straight at take-off: {value}. No change needed.', intervention: '' },
    clinician: {
      finding: 'Knee extension at take-off adequate, {side}: {value} of flexion. No intervention indicated.',
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
