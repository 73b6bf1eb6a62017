import type { RuleEntry } from '../../ruleEntry.ts';

export const leansLittleAtRelease = {
  id: 'overhead-throw/leans-little-at-release',
  kind: 'confirmation',
  movement: 'overhead-throw',
  phase: 'release',
  region: 'whole-body',
  all: [{ measure: 'trunk.contralateralLean', comparator: '<=', threshold: 30, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'You lean only a little away from your throwing arm: {value}. Keep it that way.',
      intervention: '',
    },
    practitioner: {
      finding: 'Little lean away from the throwing arm at release: {value}. No change needed.',
      intervention: '',
    },
    clinician: {
      finding: 'Contralateral trunk lean at release within the convention: {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['solomito2015', 'whiteley2007', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
