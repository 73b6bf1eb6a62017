import type { RuleEntry } from '../../ruleEntry.ts';

export const leansAwayAtRelease = {
  id: 'overhead-throw/leans-away-at-release',
  kind: 'intervention',
  movement: 'overhead-throw',
  phase: 'release',
  region: 'whole-body',
  all: [{ measure: 'trunk.contralateralLean', comparator: '>', threshold: 30, unit: 'deg' }],
  finding: 'A large lean away from the throwing arm at release: {value}.',
  intervention:
    'Stride direction and trunk control at half speed, fewer full throws while learning: 3 sets of 6, twice a week.',
  retest: { measure: 'trunk.contralateralLean', afterDays: 28 },
  loads: ['throwing-overhead', 'leg-strength', 'trunk', 'practice'],
  effects: [],
  sources: ['solomito2015', 'whiteley2007', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
