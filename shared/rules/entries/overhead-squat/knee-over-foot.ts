import type { RuleEntry } from '../../ruleEntry.ts';

export const kneeOverFoot = {
  id: 'overhead-squat/knee-over-foot',
  kind: 'confirmation',
  movement: 'overhead-squat',
  phase: 'ascent',
  region: 'knee',
  all: [{ measure: 'fppa', comparator: '<=', threshold: 10, unit: 'deg' }],
  finding: 'The {side} knee stays over the foot on the way up: {value}. No change needed.',
  intervention: '',
  retest: null,
  loads: [],
  effects: [],
  sources: ['herrington2010', 'munro2012', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
