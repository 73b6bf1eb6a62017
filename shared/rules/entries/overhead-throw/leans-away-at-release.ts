import type { RuleEntry } from '../../ruleEntry.ts';

export const leansAwayAtRelease = {
  id: 'overhead-throw/leans-away-at-release',
  kind: 'intervention',
  movement: 'overhead-throw',
  phase: 'release',
  region: 'whole-body',
  all: [{ measure: 'trunk.contralateralLean', comparator: '>', threshold: 30, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'You lean far away from your throwing arm when the ball leaves: {value}.',
      intervention:
        'Step straight at your target and keep your upper body steady at half speed. Make fewer full throws while you learn it.',
    },
    practitioner: {
      finding: 'A large lean away from the throwing arm at release: {value}.',
      intervention: 'Stride direction and trunk control at half speed, fewer full throws while learning.',
    },
    clinician: {
      finding: 'Excessive contralateral trunk lean at release: {value} (criterion above {threshold}).',
      intervention: 'Stride direction and trunk control at half speed; reduced maximal throws while learning.',
    },
  },
  drill: 'half-speed-throws',
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
