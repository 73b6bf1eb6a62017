import type { RuleEntry } from '../../ruleEntry.ts';

export const lowElbow = {
  id: 'volleyball-spike/low-elbow',
  kind: 'intervention',
  movement: 'volleyball-spike',
  phase: 'arm-cocking',
  region: 'shoulder',
  all: [{ measure: 'arm.elevation', comparator: '<', threshold: 80, unit: 'deg' }],
  finding: 'The elbow stays below the shoulder line as the arm is drawn back: {value}.',
  intervention:
    'Earlier arm lift and a swing led by the trunk, without a ball, slow then medium: 3 sets of 8, three times a week.',
  retest: { measure: 'arm.elevation', afterDays: 28 },
  loads: ['throwing-overhead', 'trunk', 'practice'],
  effects: [],
  sources: ['reeser2010', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope', 'a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
