import type { RuleEntry } from '../../ruleEntry.ts';

export const stiffLanding = {
  id: 'tennis-serve/stiff-landing',
  kind: 'intervention',
  movement: 'tennis-serve',
  phase: 'finish',
  region: 'knee',
  all: [{ measure: 'landing.kneeFlexPeak', comparator: '<', threshold: 25, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'You land stiffly: your {side} knee bends only to {value}.',
      intervention: 'Make small jumps, land quietly on your front leg and stand still, arms low.',
    },
    practitioner: {
      finding: 'A stiff landing: the {side} knee bends no further than {value}.',
      intervention: 'Small jumps that land quietly on the front leg and hold, arms low.',
    },
    clinician: {
      finding: 'Reduced peak knee flexion on landing, {side}: {value} (criterion below {threshold}).',
      intervention: 'Small jumps to a quiet, held landing on the lead leg, arms low.',
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
