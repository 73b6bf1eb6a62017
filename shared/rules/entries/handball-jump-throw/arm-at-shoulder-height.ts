import type { RuleEntry } from '../../ruleEntry.ts';

export const armAtShoulderHeight = {
  id: 'handball-jump-throw/arm-at-shoulder-height',
  kind: 'confirmation',
  movement: 'handball-jump-throw',
  phase: 'cocking',
  region: 'shoulder',
  all: [{ measure: 'arm.elevation', comparator: 'between', threshold: [75, 110], unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your upper arm is near shoulder height as you draw the ball back: {value}. Keep it there.',
      intervention: '',
    },
    practitioner: {
      finding: 'The upper arm is near shoulder height as the ball is drawn back: {value}. No change needed.',
      intervention: '',
    },
    clinician: {
      finding: 'Humeral elevation in cocking within {threshold}: {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['whiteley2007', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
