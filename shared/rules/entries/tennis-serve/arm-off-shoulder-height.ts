import type { RuleEntry } from '../../ruleEntry.ts';

export const armOffShoulderHeight = {
  id: 'tennis-serve/arm-off-shoulder-height',
  kind: 'intervention',
  movement: 'tennis-serve',
  phase: 'cocking',
  region: 'shoulder',
  all: [{ measure: 'arm.elevation', comparator: 'outside', threshold: [75, 125], unit: 'deg' }],
  finding: 'The upper arm is well off shoulder height as the racket drops: {value}.',
  intervention: 'Racket path slowly without a ball, led by the trunk: 3 sets of 8, three times a week.',
  retest: { measure: 'arm.elevation', afterDays: 28 },
  loads: ['throwing-overhead', 'trunk', 'practice'],
  effects: [],
  sources: ['kovacs2011', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope', 'a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
