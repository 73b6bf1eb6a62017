import type { RuleEntry } from '../../ruleEntry.ts';

export const releaseNearTop = {
  id: 'basketball-jump-shot/release-near-top',
  kind: 'confirmation',
  movement: 'basketball-jump-shot',
  phase: 'release',
  region: 'whole-body',
  all: [{ measure: 'release.apexOffset', comparator: 'between', threshold: [-120, 50], unit: 'ms' }],
  wording: {
    athlete: { finding: 'You let the ball go near the top of your jump: {value}. Keep that timing.', intervention: '' },
    practitioner: {
      finding: 'The ball leaves near the top of the jump: {value}. No change to timing needed.',
      intervention: '',
    },
    clinician: {
      finding: 'Release offset from apex within {threshold}: {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['okazaki2015', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
