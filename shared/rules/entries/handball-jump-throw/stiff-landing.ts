import type { RuleEntry } from '../../ruleEntry.ts';

export const stiffLanding = {
  id: 'handball-jump-throw/stiff-landing',
  kind: 'intervention',
  movement: 'handball-jump-throw',
  phase: 'follow-through-and-landing',
  region: 'knee',
  all: [{ measure: 'landing.kneeFlexPeak', comparator: '<', threshold: 45, unit: 'deg' }],
  finding: 'A stiff landing: the {side} knee bends no further than {value}.',
  intervention:
    'Quiet landings from a low box, then after a jump off one foot without a ball: 3 sets of 5, twice a week.',
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
