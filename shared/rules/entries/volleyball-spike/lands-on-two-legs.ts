import type { RuleEntry } from '../../ruleEntry.ts';

export const landsOnTwoLegs = {
  id: 'volleyball-spike/lands-on-two-legs',
  kind: 'confirmation',
  movement: 'volleyball-spike',
  phase: 'landing',
  region: 'knee',
  all: [{ measure: 'landing.singleLegShare', comparator: '<=', threshold: 50, unit: '%' }],
  wording: {
    athlete: { finding: 'You mostly land on both legs: {value} on one. Keep it that way.', intervention: '' },
    practitioner: { finding: 'Most landings are on both legs: {value} on one. No change needed.', intervention: '' },
    clinician: {
      finding: 'Predominantly bilateral landings: {value} on one leg. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['padua2015', 'convention'],
  evidence: 'expert',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
