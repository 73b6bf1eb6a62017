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
    { measure: 'athlete.throws', comparator: 'is', threshold: true, unit: null },
  ],
  wording: {
    athlete: {
      finding: 'Your throwing shoulder turns in less than the other one by {value}, and turns less in all.',
      intervention:
        'Do the mobility work for the back of your shoulder that you were shown. Write down how hard your week was.',
    },
    practitioner: {
      finding: 'Internal rotation is down by {value} on the dominant side, and the whole arc is smaller too.',
      intervention:
        'Mobility for the back of the shoulder, a look at the weekly load, and the same rater again in four weeks.',
    },
    clinician: {
      finding: 'Internal-rotation deficit of {value} with loss of total arc on the dominant side.',
      intervention: 'Posterior shoulder mobility; review weekly load; re-measure by the same rater in four weeks.',
    },
  },
  drill: 'back-of-shoulder-mobility',
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
