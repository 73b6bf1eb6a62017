import type { RuleEntry } from '../../ruleEntry.ts';

export const scaleOrTimeWrong = {
  id: 'overhead-throw/scale-or-time-wrong',
  kind: 'caution',
  movement: 'overhead-throw',
  phase: 'whole',
  region: 'whole-body',
  all: [{ measure: 'ball.gravityFound', comparator: 'outside', threshold: [8.8, 10.8], unit: 'm/s2' }],
  finding: 'The ball’s own flight gives a gravity of {value}: scale, frame rate or slow motion is wrong.',
  intervention: 'Check the calibration length, its plane and the capture rate before reading any number of this trial.',
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
