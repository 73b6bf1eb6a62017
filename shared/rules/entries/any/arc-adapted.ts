import type { RuleEntry } from '../../ruleEntry.ts';

export const arcAdapted = {
  id: 'any/arc-adapted',
  kind: 'confirmation',
  movement: 'any',
  phase: 'profile',
  region: 'shoulder',
  all: [
    { measure: 'shoulder.irDeficit', comparator: '>=', threshold: 5, unit: 'deg' },
    { measure: 'shoulder.irDeficit', comparator: '<', threshold: 18, unit: 'deg' },
    { measure: 'shoulder.arcDeficit', comparator: '<=', threshold: 5, unit: 'deg' },
    { measure: 'athlete.throws', comparator: 'is', threshold: true, unit: null },
  ],
  wording: {
    athlete: {
      finding:
        'Your throwing shoulder turns in less by {value} and out more. That is usual in people who throw. No stretching needed.',
      intervention: '',
    },
    practitioner: {
      finding:
        'Internal rotation is {value} lower on the dominant side with the whole arc kept: the common adaptation to throwing. No stretching needed.',
      intervention: '',
    },
    clinician: {
      finding:
        'Internal rotation lower by {value}, total arc preserved: common throwing adaptation. No stretching indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['wilk2011', 'wilk2012', 'manske2013'],
  evidence: 'limited',
  basis: 'published',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
