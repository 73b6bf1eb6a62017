import type { RuleEntry } from '../../ruleEntry.ts';

export const straightKneeAtContact = {
  id: 'countermovement-jump/straight-knee-at-contact',
  kind: 'intervention',
  movement: 'countermovement-jump',
  phase: 'landing',
  region: 'knee',
  all: [{ measure: 'knee.flexAtContact', comparator: '<', threshold: 10, unit: 'deg' }],
  finding: 'The {side} knee is nearly straight as the foot lands: {value}.',
  intervention: 'Softer, quieter landings from a low box, then higher: 3 sets of 5, twice a week.',
  retest: { measure: 'knee.flexAtContact', afterDays: 28 },
  loads: ['jumping', 'effort'],
  effects: [],
  sources: ['padua2009', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
