import type { RuleEntry } from '../../ruleEntry.ts';

export const landsOnOneLeg = {
  id: 'volleyball-spike/lands-on-one-leg',
  kind: 'intervention',
  movement: 'volleyball-spike',
  phase: 'landing',
  region: 'knee',
  all: [{ measure: 'landing.singleLegShare', comparator: '>', threshold: 50, unit: '%' }],
  finding: 'Most landings are on one leg: {value}.',
  intervention:
    'Approach jumps without a ball so that both feet land, and landing practice in the warm-up: 3 sets of 5, three times a week.',
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
