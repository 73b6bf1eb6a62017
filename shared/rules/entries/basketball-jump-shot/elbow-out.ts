import type { RuleEntry } from '../../ruleEntry.ts';

export const elbowOut = {
  id: 'basketball-jump-shot/elbow-out',
  kind: 'intervention',
  movement: 'basketball-jump-shot',
  phase: 'ball-elevation',
  region: 'shoulder',
  all: [{ measure: 'elbow.lateralDeviation', comparator: '>', threshold: 15, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your elbow goes out to the side as the ball rises: {value}.',
      intervention:
        'Shoot from close to the basket with your elbow under the ball. Turn your feet a little if that feels easier.',
    },
    practitioner: {
      finding: 'The elbow travels outside the shooting plane as the ball rises: {value}.',
      intervention:
        'Form shots near the basket with the elbow under the ball; turn the feet a little to suit the shoulder.',
    },
    clinician: {
      finding: 'Lateral elbow deviation from the shooting plane: {value} (criterion above {threshold}).',
      intervention:
        'Close-range form shooting with the elbow beneath the ball; adjust foot orientation to available shoulder range.',
    },
  },
  drill: 'form-shots',
  retest: { measure: 'elbow.lateralDeviation', afterDays: 28 },
  loads: ['overhead-light', 'practice'],
  effects: [
    {
      condition: 'anterior-shoulder-instability',
      effect: 'replace',
      change:
        'Turn the feet instead and keep the arm in front of the body and below shoulder height. The elbow is never pulled in by force.',
      unsafeFor: ['multidirectional-shoulder-instability'],
    },
  ],
  sources: ['okazaki2015', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
