import type { RuleEntry } from '../../ruleEntry.ts';

export const tossLeans = {
  id: 'tennis-serve/toss-leans',
  kind: 'intervention',
  movement: 'tennis-serve',
  phase: 'release',
  region: 'shoulder',
  all: [{ measure: 'ball.releaseAngle', comparator: '<', threshold: 70, unit: 'deg' }],
  finding: 'The toss leaves well off the vertical: {value} above the horizontal.',
  intervention: 'Toss along a wall or line without hitting: 20 a session, three times a week.',
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
