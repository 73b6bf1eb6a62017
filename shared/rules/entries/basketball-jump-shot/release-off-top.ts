import type { RuleEntry } from '../../ruleEntry.ts';

export const releaseOffTop = {
  id: 'basketball-jump-shot/release-off-top',
  kind: 'intervention',
  movement: 'basketball-jump-shot',
  phase: 'release',
  region: 'whole-body',
  all: [{ measure: 'release.apexOffset', comparator: 'outside', threshold: [-120, 50], unit: 'ms' }],
  wording: {
    athlete: {
      finding: 'You let the ball go too early or on the way down: {value} from the top.',
      intervention: 'Practise your rhythm: shoot on one count from close by, then from farther away.',
    },
    practitioner: {
      finding: 'The ball leaves too early or on the way down: {value} from the top.',
      intervention: 'Rhythm work: one-count shots at short range, then add distance.',
    },
    clinician: {
      finding: 'Release offset from apex outside {threshold}: {value}.',
      intervention: 'Rhythm training: one-count shots at short range, distance added progressively.',
    },
  },
  drill: 'one-count-shots',
  retest: { measure: 'release.apexOffset', afterDays: 28 },
  loads: ['overhead-light', 'jumping', 'practice', 'trunk'],
  effects: [],
  sources: ['okazaki2015', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
