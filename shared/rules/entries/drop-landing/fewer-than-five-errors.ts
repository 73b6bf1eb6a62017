import type { RuleEntry } from '../../ruleEntry.ts';

export const fewerThanFiveErrors = {
  id: 'drop-landing/fewer-than-five-errors',
  kind: 'confirmation',
  movement: 'drop-landing',
  phase: 'whole',
  region: 'knee',
  all: [{ measure: 'landing.errors', comparator: '<', threshold: 5, unit: '{errors}' }],
  wording: {
    athlete: {
      finding: 'Your landing had {value} of the listed mistakes, fewer than five. The team warm-up is enough.',
      intervention: '',
    },
    practitioner: {
      finding: 'Fewer than five landing errors: {value}. No landing work needed beyond the team warm-up.',
      intervention: '',
    },
    clinician: {
      finding: 'Landing error count {value}, below five. No landing intervention beyond the team warm-up.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['padua2015', 'welling2018'],
  evidence: 'moderate',
  basis: 'published',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
