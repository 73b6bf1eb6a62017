import type { RuleEntry } from '../../ruleEntry.ts';

export const rotatorBalanceUsual = {
  id: 'any/rotator-balance-usual',
  kind: 'confirmation',
  movement: 'any',
  phase: 'profile',
  region: 'shoulder',
  all: [
    { measure: 'shoulder.erIrRatio', comparator: '>=', threshold: 0.75, unit: '1' },
    { measure: 'shoulder.erSideDeficit', comparator: '<', threshold: 10, unit: '%' },
  ],
  wording: {
    athlete: {
      finding: 'The muscles that turn your arm in and out are well balanced: {value}. Keep it up.',
      intervention: '',
    },
    practitioner: {
      finding: 'The balance of the rotators is in the usual range: {value}. Keep it up.',
      intervention: '',
    },
    clinician: {
      finding: 'External-to-internal rotation ratio within the usual range: {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['riemann2010', 'cools2015'],
  evidence: 'limited',
  basis: 'published',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
