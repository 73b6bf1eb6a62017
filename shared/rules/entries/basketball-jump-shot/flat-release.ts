import type { RuleEntry } from '../../ruleEntry.ts';

export const flatRelease = {
  id: 'basketball-jump-shot/flat-release',
  kind: 'intervention',
  movement: 'basketball-jump-shot',
  phase: 'release',
  region: 'shoulder',
  all: [{ measure: 'ball.releaseAngle', comparator: '<', threshold: 45, unit: 'deg' }],
  finding: 'Flat release: {value}.',
  intervention:
    'A higher finish with arc targets near the basket, and check that leg drive is not missing: 50 shots, three times a week.',
  retest: { measure: 'ball.releaseAngle', afterDays: 28 },
  loads: ['overhead-light', 'practice'],
  effects: [],
  sources: ['miller1996', 'jumpShotDistance', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
