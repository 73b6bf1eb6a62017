import type { RuleEntry } from '../../ruleEntry.ts';

export const tossLeans = {
  id: 'tennis-serve/toss-leans',
  kind: 'intervention',
  movement: 'tennis-serve',
  phase: 'release',
  region: 'shoulder',
  all: [{ measure: 'ball.releaseAngle', comparator: '<', threshold: 70, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your toss does not go straight up: {value}, where 90° would be straight up.',
      intervention: 'Toss the ball along a wall or a line, without the racket.',
    },
    practitioner: {
      finding: 'The toss leaves well off the vertical: {value} above the horizontal.',
      intervention: 'Toss along a wall or line without hitting.',
    },
    clinician: {
      finding: 'Toss angle {value} above the horizontal (criterion below {threshold}).',
      intervention: 'Toss practice along a vertical reference, no stroke.',
    },
  },
  drill: 'toss-along-a-line',
  retest: { measure: 'ball.releaseAngle', afterDays: 28 },
  loads: ['overhead-light', 'practice'],
  effects: [],
  sources: ['convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
