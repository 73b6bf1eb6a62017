import type { RuleEntry } from '../../ruleEntry.ts';

export const lungeShortOnOneSide = {
  id: 'any/lunge-short-on-one-side',
  kind: 'intervention',
  movement: 'any',
  phase: 'profile',
  region: 'ankle',
  all: [
    { measure: 'wblt.distance', comparator: '<', threshold: 9, unit: 'cm' },
    { measure: 'wblt.diff', comparator: '>=', threshold: 1.5, unit: 'cm' },
  ],
  finding: 'The {side} ankle bends less under weight: {value}.',
  intervention:
    'Calf and joint mobility under body weight, 3 sets of 10 every day for four weeks, then the same rater again.',
  retest: { measure: 'wblt.distance', afterDays: 28 },
  loads: ['ankle-mobility', 'practice'],
  effects: [],
  sources: ['powden2015', 'chisholm2012', 'dill2014', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope', 'a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
