import type { RuleEntry } from '../../ruleEntry.ts';

export const speedIsAUnitError = {
  id: 'handball-jump-throw/speed-is-a-unit-error',
  kind: 'caution',
  movement: 'handball-jump-throw',
  phase: 'release',
  region: 'whole-body',
  all: [{ measure: 'ball.releaseSpeed', comparator: '>', threshold: 45, unit: 'm/s' }],
  wording: {
    athlete: {
      finding: 'The ball speed of {value} cannot be right. Something was measured wrongly.',
      intervention: 'Nothing for you to do. Whoever measured the film checks it first.',
    },
    practitioner: {
      finding: 'A ball speed of {value} is beyond any throw: likely a wrong unit or scale.',
      intervention: 'Check the scale and the capture rate; a figure in km/h is 3.6 times one in m/s.',
    },
    clinician: {
      finding: 'Ball speed of {value} exceeds any reported throw: probable unit or scale error.',
      intervention: 'Recheck scale and capture rate; km/h reads 3.6 times m/s.',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
