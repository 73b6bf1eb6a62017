import type { RuleEntry } from '../../ruleEntry.ts';

export const straightKneeAtContact = {
  id: 'countermovement-jump/straight-knee-at-contact',
  kind: 'intervention',
  movement: 'countermovement-jump',
  phase: 'landing',
  region: 'knee',
  all: [{ measure: 'knee.flexAtContact', comparator: '<', threshold: 10, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your {side} knee is almost straight when your foot lands: {value}.',
      intervention: 'Land softly and quietly with bent knees: first from a low box, then from a higher one.',
    },
    practitioner: {
      finding: 'The {side} knee is nearly straight as the foot lands: {value}.',
      intervention: 'Softer, quieter landings from a low box, then higher.',
    },
    clinician: {
      finding: 'Near-extended knee at initial contact, {side}: {value} of flexion (criterion below {threshold}).',
      intervention: 'Landing retraining from a low box, cueing knee flexion before contact; height progressed.',
    },
  },
  drill: 'quiet-landings',
  retest: { measure: 'knee.flexAtContact', afterDays: 28 },
  loads: ['jumping', 'effort'],
  effects: [],
  sources: ['padua2009', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
