import type { RuleEntry } from '../../ruleEntry.ts';

export const fiveErrorsOrMore = {
  id: 'drop-landing/five-errors-or-more',
  kind: 'intervention',
  movement: 'drop-landing',
  phase: 'whole',
  region: 'knee',
  all: [{ measure: 'landing.errors', comparator: '>=', threshold: 5, unit: '{errors}' }],
  wording: {
    athlete: {
      finding: 'Your landing had {value} of the listed mistakes. Five or more can be trained.',
      intervention: 'Warm up with landings and with control of your middle and hips.',
    },
    practitioner: {
      finding: 'Five or more landing errors: {value}.',
      intervention: 'A warm-up with landing, trunk and hip control.',
    },
    clinician: {
      finding: 'Landing error count {value} (criterion at least {threshold}).',
      intervention: 'Neuromuscular warm-up: landing technique, trunk and hip control.',
    },
  },
  drill: 'landing-warm-up',
  retest: { measure: 'landing.errors', afterDays: 42 },
  loads: ['jumping', 'effort'],
  effects: [],
  sources: ['padua2015', 'padua2009'],
  evidence: 'moderate',
  basis: 'published',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
