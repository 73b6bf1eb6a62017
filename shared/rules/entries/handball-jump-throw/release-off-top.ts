import type { RuleEntry } from '../../ruleEntry.ts';

export const releaseOffTop = {
  id: 'handball-jump-throw/release-off-top',
  kind: 'intervention',
  movement: 'handball-jump-throw',
  phase: 'release',
  region: 'whole-body',
  all: [{ measure: 'release.apexOffset', comparator: 'outside', threshold: [-100, 60], unit: 'ms' }],
  finding: 'The ball leaves well away from the top of the jump: {value} (negative: on the way up).',
  intervention: 'Rhythm of step, jump and throw with a light ball, calling the top aloud: 3 sets of 5, twice a week.',
  retest: { measure: 'release.apexOffset', afterDays: 28 },
  loads: ['throwing-overhead', 'jumping', 'trunk', 'effort'],
  effects: [],
  sources: ['convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
