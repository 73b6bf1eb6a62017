import type { RuleEntry } from '../../ruleEntry.ts';

export const releaseNearTop = {
  id: 'handball-jump-throw/release-near-top',
  kind: 'confirmation',
  movement: 'handball-jump-throw',
  phase: 'release',
  region: 'whole-body',
  all: [{ measure: 'release.apexOffset', comparator: 'between', threshold: [-100, 60], unit: 'ms' }],
  wording: {
    athlete: { finding: 'The ball leaves near the top of your jump: {value}. Keep that timing.', intervention: '' },
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
  sources: ['convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
