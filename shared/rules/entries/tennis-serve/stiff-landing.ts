import type { RuleEntry } from '../../ruleEntry.ts';

export const stiffLanding = {
  id: 'tennis-serve/stiff-landing',
  kind: 'intervention',
  movement: 'tennis-serve',
  phase: 'finish',
  region: 'knee',
  all: [{ measure: 'landing.kneeFlexPeak', comparator: '<', threshold: 25, unit: 'deg' }],
  finding: 'A stiff landing: the {side} knee bends no further than {value}.',
  intervention: 'Small jumps that land quietly on the front leg and hold, arms low: 3 sets of 5, twice a week.',
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
