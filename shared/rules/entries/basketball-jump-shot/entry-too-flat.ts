import type { RuleEntry } from '../../ruleEntry.ts';

export const entryTooFlat = {
  id: 'basketball-jump-shot/entry-too-flat',
  kind: 'intervention',
  movement: 'basketball-jump-shot',
  phase: 'release',
  region: 'shoulder',
  all: [{ measure: 'ball.entryAngle', comparator: '<', threshold: 32.7, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'The ball comes down at {value}: too flat to drop in without touching the ring.',
      intervention: 'Shoot over a target from close by. Step back only as long as your arc stays high.',
    },
    practitioner: {
      finding: 'The ball comes down at {value}: too flat to pass the ring without touching it.',
      intervention: 'Arc targets from short range, then step back as long as the arc holds.',
    },
    clinician: {
      finding: 'Entry angle {value}, below the geometric limit for a clean pass of {threshold}.',
      intervention: 'Arc constraints at short range; increase distance while the arc is maintained.',
    },
  },
  drill: 'arc-targets',
  retest: { measure: 'ball.entryAngle', afterDays: 28 },
  loads: ['overhead-light', 'practice'],
  effects: [],
  sources: ['jumpShotDistance', 'freeFlight'],
  evidence: 'limited',
  basis: 'published',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
