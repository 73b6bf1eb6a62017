import type { RuleEntry } from '../../ruleEntry.ts';

export const flatRelease = {
  id: 'basketball-jump-shot/flat-release',
  kind: 'intervention',
  movement: 'basketball-jump-shot',
  phase: 'release',
  region: 'shoulder',
  all: [{ measure: 'ball.releaseAngle', comparator: '<', threshold: 45, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your shot starts flat: {value}.',
      intervention: 'Finish higher: shoot over a target near the basket. Push more from your legs.',
    },
    practitioner: {
      finding: 'Flat release: {value}.',
      intervention: 'A higher finish with arc targets near the basket, and check that leg drive is not missing.',
    },
    clinician: {
      finding: 'Low release angle: {value} (criterion below {threshold}).',
      intervention: 'Higher finish with arc constraints at short range; screen for deficient leg drive.',
    },
  },
  drill: 'arc-targets',
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
