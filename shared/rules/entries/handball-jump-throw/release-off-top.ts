import type { RuleEntry } from '../../ruleEntry.ts';

export const releaseOffTop = {
  id: 'handball-jump-throw/release-off-top',
  kind: 'intervention',
  movement: 'handball-jump-throw',
  phase: 'release',
  region: 'whole-body',
  all: [{ measure: 'release.apexOffset', comparator: 'outside', threshold: [-100, 60], unit: 'ms' }],
  wording: {
    athlete: {
      finding: 'The ball leaves your hand too far from the top of your jump: {value} (minus means on the way up).',
      intervention:
        'Practise the rhythm of step, jump, throw with a light ball. Call out loud when you are at the top.',
    },
    practitioner: {
      finding: 'The ball leaves well away from the top of the jump: {value} (negative: on the way up).',
      intervention: 'Rhythm of step, jump and throw with a light ball, calling the top aloud.',
    },
    clinician: {
      finding: 'Release offset from apex outside {threshold}: {value} (negative: before apex).',
      intervention: 'Timing practice with a light ball and self-called apex; external rhythm cue.',
    },
  },
  drill: 'call-the-top',
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
