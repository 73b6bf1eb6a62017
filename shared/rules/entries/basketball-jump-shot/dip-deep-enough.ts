import type { RuleEntry } from '../../ruleEntry.ts';

export const dipDeepEnough = {
  id: 'basketball-jump-shot/dip-deep-enough',
  kind: 'confirmation',
  movement: 'basketball-jump-shot',
  phase: 'preparation',
  region: 'whole-body',
  all: [{ measure: 'knee.flexPeak', comparator: '>=', threshold: 45, unit: 'deg' }],
  wording: {
    athlete: { finding: 'Your knees bend enough before you jump: {value}. Keep it that way.', intervention: '' },
    practitioner: { finding: 'The knees bend to {value} before take-off. No change needed.', intervention: '' },
    clinician: { finding: 'Preparatory knee flexion adequate: {value}. No intervention indicated.', intervention: '' },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['okazaki2015', 'knudson1993', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
