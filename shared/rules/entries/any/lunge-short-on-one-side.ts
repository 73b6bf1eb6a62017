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
  wording: {
    athlete: {
      finding: 'Your {side} ankle bends less than the other one: {value}.',
      intervention: 'Push your knee over your toes with the heel down, and stretch your calf.',
    },
    practitioner: {
      finding: 'The {side} ankle bends less under weight: {value}.',
      intervention: 'Calf and joint mobility under body weight, then the same rater again.',
    },
    clinician: {
      finding: 'Reduced weight-bearing dorsiflexion, {side}: {value}.',
      intervention: 'Weight-bearing dorsiflexion mobility, calf and joint; re-measure by the same rater.',
    },
  },
  drill: 'knee-over-toes',
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
