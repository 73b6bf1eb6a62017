import type { RuleEntry } from '../../ruleEntry.ts';

export const littleBend = {
  id: 'drop-landing/little-bend',
  kind: 'intervention',
  movement: 'drop-landing',
  phase: 'absorption',
  region: 'knee',
  all: [{ measure: 'landing.kneeFlexPeak', comparator: '<', threshold: 45, unit: 'deg' }],
  finding: 'Little bend after contact: the {side} knee reaches {value}.',
  intervention: 'Quiet two-foot landings from a low box with a deeper finish: 3 sets of 5, twice a week.',
  retest: { measure: 'landing.kneeFlexPeak', afterDays: 28 },
  loads: ['jumping', 'effort'],
  effects: [],
  sources: ['padua2009', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
