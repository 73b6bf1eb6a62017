import type { RuleEntry } from '../../ruleEntry.ts';

export const releaseAngleUsual = {
  id: 'basketball-jump-shot/release-angle-usual',
  kind: 'confirmation',
  movement: 'basketball-jump-shot',
  phase: 'release',
  region: 'shoulder',
  all: [{ measure: 'ball.releaseAngle', comparator: 'between', threshold: [48, 56], unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your shot leaves as steeply as that of skilled shooters: {value}. Keep your arc.',
      intervention: '',
    },
    practitioner: {
      finding: 'Release angle in the range reported for skilled shooters: {value}. No change to arc needed.',
      intervention: '',
    },
    clinician: {
      finding:
        'Release angle within {threshold}, the range reported for skilled shooters: {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['miller1996', 'okazaki2015', 'slegers2022'],
  evidence: 'limited',
  basis: 'derived',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
