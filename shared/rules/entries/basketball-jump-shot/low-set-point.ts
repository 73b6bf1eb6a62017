import type { RuleEntry } from '../../ruleEntry.ts';

export const lowSetPoint = {
  id: 'basketball-jump-shot/low-set-point',
  kind: 'intervention',
  movement: 'basketball-jump-shot',
  phase: 'stability',
  region: 'shoulder',
  all: [{ measure: 'arm.elevation', comparator: '<', threshold: 80, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'You hold the ball low before you shoot: your upper arm is at {value}.',
      intervention:
        'Shoot from close to the basket and start a little higher each week. Train lifting in front of your body.',
    },
    practitioner: {
      finding: 'Low set point: the upper arm is at {value}.',
      intervention:
        'Raise the set point in small steps with shots near the basket, and strengthen overhead in front of the body.',
    },
    clinician: {
      finding: 'Low set point: humeral elevation {value} (criterion below {threshold}).',
      intervention: 'Graded elevation of the set point at short range; overhead strengthening anterior to the trunk.',
    },
  },
  drill: 'higher-set-point',
  retest: { measure: 'arm.elevation', afterDays: 28 },
  loads: ['overhead-light', 'practice'],
  effects: [
    {
      condition: 'anterior-shoulder-instability',
      effect: 'replace',
      change:
        'No arm-behind-head set point and no overhead pressing. Pressing on an incline in front of the body and rows, until a clinician clears more.',
      unsafeFor: ['posterior-shoulder-instability', 'multidirectional-shoulder-instability'],
    },
  ],
  sources: ['okazaki2015', 'okazaki2018', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope', 'a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
