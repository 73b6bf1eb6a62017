import type { RuleEntry } from '../../ruleEntry.ts';

export const rotationAndArcLost = {
  id: 'any/rotation-and-arc-lost',
  kind: 'intervention',
  movement: 'any',
  phase: 'profile',
  region: 'shoulder',
  all: [
    { measure: 'shoulder.irDeficit', comparator: '>=', threshold: 18, unit: 'deg' },
    { measure: 'shoulder.arcDeficit', comparator: '>', threshold: 5, unit: 'deg' },
  ],
  finding: 'Internal rotation is down by {value} on the dominant side, and the whole arc is smaller too.',
  intervention:
    'Mobility for the back of the shoulder several days a week, a look at the weekly load, and the same rater again in four weeks.',
  retest: { measure: 'shoulder.arcDeficit', afterDays: 28 },
  loads: ['shoulder-stretch', 'practice'],
  effects: [],
  sources: ['wilk2011', 'manske2013'],
  evidence: 'limited',
  basis: 'published',
  defersTo: ['a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
