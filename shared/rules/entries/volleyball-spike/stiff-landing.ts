import type { RuleEntry } from '../../ruleEntry.ts';

export const stiffLanding = {
  id: 'volleyball-spike/stiff-landing',
  kind: 'intervention',
  movement: 'volleyball-spike',
  phase: 'landing',
  region: 'knee',
  all: [{ measure: 'landing.kneeFlexPeak', comparator: '<', threshold: 45, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'You land stiffly: your {side} knee bends only to {value}.',
      intervention: 'Land so softly that nobody hears it: first from a low box, later after a run-up without a ball.',
    },
    practitioner: {
      finding: 'A stiff landing: the {side} knee bends no further than {value}.',
      intervention: 'Quiet landings from a low box, then after an approach without a ball.',
    },
    clinician: {
      finding: 'Reduced peak knee flexion on landing, {side}: {value} (criterion below {threshold}).',
      intervention:
        'Landing retraining: low box, then after an approach without a ball, cueing greater hip and knee flexion.',
    },
  },
  drill: 'quiet-landings',
  retest: { measure: 'landing.kneeFlexPeak', afterDays: 28 },
  loads: ['jumping', 'effort'],
  effects: [],
  sources: ['padua2009', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
