import type { RuleEntry } from '../../ruleEntry.ts';

export const elbowStillBent = {
  id: 'overhead-throw/elbow-still-bent',
  kind: 'intervention',
  movement: 'overhead-throw',
  phase: 'acceleration',
  region: 'shoulder',
  all: [{ measure: 'elbow.flexAtRelease', comparator: '>', threshold: 50, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your elbow is still well bent when the ball leaves your hand: {value}.',
      intervention:
        'Make short throws with a light ball. Let your elbow open late and all the way. Full speed comes last.',
    },
    practitioner: {
      finding: 'The elbow is still well bent as the ball leaves: {value}.',
      intervention: 'Short throws with a light ball that let the elbow open late and fully; full speed last.',
    },
    clinician: {
      finding: 'Residual elbow flexion at release: {value} (criterion above {threshold}).',
      intervention: 'Short throws with a light ball to late, complete elbow extension; maximal velocity last.',
    },
  },
  drill: 'standing-light-throws',
  retest: { measure: 'elbow.flexAtRelease', afterDays: 28 },
  loads: ['throwing-overhead', 'trunk', 'practice'],
  effects: [],
  sources: ['vanDenTillaar2007', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope', 'a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
