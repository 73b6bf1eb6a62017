import type { RuleEntry } from '../../ruleEntry.ts';

export const bendEnough = {
  id: 'drop-landing/bend-enough',
  kind: 'confirmation',
  movement: 'drop-landing',
  phase: 'absorption',
  region: 'knee',
  all: [{ measure: 'landing.kneeFlexPeak', comparator: '>=', threshold: 45, unit: 'deg' }],
  wording: {
    athlete: { finding: 'Your {side} knee bends enough after you land: {value}. Keep it that way.', intervention: '' },
    practitioner: { finding: 'The {side} knee bends to {value} after contact. No change needed.', intervention: '' },
    clinician: {
      finding: 'Peak knee flexion after contact adequate, {side}: {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['padua2009', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
