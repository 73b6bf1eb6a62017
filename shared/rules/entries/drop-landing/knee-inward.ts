import type { RuleEntry } from '../../ruleEntry.ts';

export const kneeInward = {
  id: 'drop-landing/knee-inward',
  kind: 'intervention',
  movement: 'drop-landing',
  phase: 'absorption',
  region: 'knee',
  all: [{ measure: 'fppa', comparator: '>', threshold: { female: 13, male: 8 }, unit: 'deg' }],
  finding: 'The {side} knee moves inward on landing: {value}, past {threshold}.',
  intervention:
    'Hip and trunk strength, landings led by film or mirror from a low box, and a look at ankle bend: 3 sets of 6, twice a week.',
  retest: { measure: 'fppa', afterDays: 42 },
  loads: ['leg-strength', 'jumping', 'practice'],
  effects: [],
  sources: ['herrington2010', 'munro2012', 'schurr2017', 'straub2022'],
  evidence: 'limited',
  basis: 'published',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
