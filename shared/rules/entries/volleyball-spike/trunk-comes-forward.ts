import type { RuleEntry } from '../../ruleEntry.ts';

export const trunkComesForward = {
  id: 'volleyball-spike/trunk-comes-forward',
  kind: 'confirmation',
  movement: 'volleyball-spike',
  phase: 'follow-through',
  region: 'whole-body',
  all: [{ measure: 'trunk.finishFlexion', comparator: '>=', threshold: 5, unit: 'deg' }],
  wording: {
    athlete: { finding: 'Your upper body comes forward after the hit: {value}. Keep it that way.', intervention: '' },
    practitioner: { finding: 'The trunk comes forward after the hit: {value}. No change needed.', intervention: '' },
    clinician: {
      finding: 'Trunk flexion after contact adequate: {value}. No intervention indicated.',
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
