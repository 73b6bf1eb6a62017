import type { RuleEntry } from '../../ruleEntry.ts';

export const kneeInward = {
  id: 'overhead-squat/knee-inward',
  kind: 'intervention',
  movement: 'overhead-squat',
  phase: 'ascent',
  region: 'knee',
  all: [{ measure: 'fppa', comparator: '>', threshold: 10, unit: 'deg' }],
  finding: 'The {side} knee moves inward on the way up: {value}. There is no published band for this squat.',
  intervention: 'Hip and foot control with a band or mirror, then single-leg strength: 3 sets of 8, twice a week.',
  retest: { measure: 'fppa', afterDays: 42 },
  loads: ['leg-strength', 'practice'],
  effects: [],
  sources: ['herrington2010', 'munro2012', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
