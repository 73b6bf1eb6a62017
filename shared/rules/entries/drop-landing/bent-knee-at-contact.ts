import type { RuleEntry } from '../../ruleEntry.ts';

export const bentKneeAtContact = {
  id: 'drop-landing/bent-knee-at-contact',
  kind: 'confirmation',
  movement: 'drop-landing',
  phase: 'initial-contact',
  region: 'knee',
  all: [{ measure: 'knee.flexAtContact', comparator: '>=', threshold: 30, unit: 'deg' }],
  wording: {
    athlete: { finding: 'Your {side} knee is bent when your foot lands: {value}. Keep it that way.', intervention: '' },
    practitioner: {
      finding: 'The {side} knee is bent as the foot lands: {value}. No change needed.',
      intervention: '',
    },
    clinician: {
      finding: 'Knee flexion at initial contact adequate, {side}: {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['padua2009', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
