import type { RuleEntry } from '../../ruleEntry.ts';

export const lowArmAtRelease = {
  id: 'basketball-jump-shot/low-arm-at-release',
  kind: 'intervention',
  movement: 'basketball-jump-shot',
  phase: 'release',
  region: 'shoulder',
  all: [{ measure: 'arm.elevation', comparator: '<', threshold: 110, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your arm is low when the ball leaves: your upper arm is at {value}.',
      intervention: 'Finish by reaching up. Train to move and lift your arms high in front of your body.',
    },
    practitioner: {
      finding: 'Low arm at release: the upper arm is at {value}.',
      intervention: 'Reach-up finish, with mobility and strength overhead in front of the body.',
    },
    clinician: {
      finding: 'Reduced humeral elevation at release: {value} (criterion below {threshold}).',
      intervention: 'Reach-up finish cue; overhead mobility and strengthening anterior to the trunk.',
    },
  },
  drill: 'reach-up-finish',
  retest: { measure: 'arm.elevation', afterDays: 28 },
  loads: ['overhead-light', 'practice'],
  effects: [],
  sources: ['okazaki2015', 'okazaki2018', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope', 'a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
