import type { RuleEntry } from '../../ruleEntry.ts';

export const scaleOrTimeWrong = {
  id: 'basketball-jump-shot/scale-or-time-wrong',
  kind: 'caution',
  movement: 'basketball-jump-shot',
  phase: 'whole',
  region: 'whole-body',
  all: [{ measure: 'ball.gravityFound', comparator: 'outside', threshold: [8.8, 10.8], unit: 'm/s2' }],
  wording: {
    athlete: {
      finding:
        'The film is measured wrongly: the ball seems to fall with {value}. The numbers of this film do not count yet.',
      intervention: 'Nothing for you to do. Whoever measured the film checks its length and speed first.',
    },
    practitioner: {
      finding: 'The ball’s own flight gives a gravity of {value}: scale, frame rate or slow motion is wrong.',
      intervention:
        'Check the calibration length, its plane and the capture rate before reading any number of this trial.',
    },
    clinician: {
      finding:
        'Implausible free-flight gravity: {value}. Calibration or time base invalid; no value of this trial is interpretable.',
      intervention: 'Recheck calibration length, plane and capture rate before interpreting this trial.',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['freeFlight', 'convention'],
  evidence: 'strong',
  basis: 'derived',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
