import type { RuleEntry } from '../../ruleEntry.ts';

export const landsOnOneLeg = {
  id: 'volleyball-spike/lands-on-one-leg',
  kind: 'intervention',
  movement: 'volleyball-spike',
  phase: 'landing',
  region: 'knee',
  all: [{ measure: 'landing.singleLegShare', comparator: '>', threshold: 50, unit: '%' }],
  wording: {
    athlete: {
      finding: 'You land on one leg most of the time: {value}.',
      intervention: 'Jump with your run-up but without a ball, and land on both feet. Practise landing in the warm-up.',
    },
    practitioner: {
      finding: 'Most landings are on one leg: {value}.',
      intervention: 'Approach jumps without a ball so that both feet land, and landing practice in the warm-up.',
    },
    clinician: {
      finding: 'Predominantly single-leg landings: {value}.',
      intervention: 'Approach jumps without a ball to bilateral landing; landing practice in the warm-up.',
    },
  },
  drill: 'two-foot-landings',
  retest: { measure: 'landing.singleLegShare', afterDays: 28 },
  loads: ['jumping', 'effort'],
  effects: [],
  sources: ['padua2015', 'convention'],
  evidence: 'expert',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
