import type { RuleEntry } from '../../ruleEntry.ts';

export const softLanding = {
  id: 'tennis-serve/soft-landing',
  kind: 'confirmation',
  movement: 'tennis-serve',
  phase: 'finish',
  region: 'knee',
  all: [{ measure: 'landing.kneeFlexPeak', comparator: '>=', threshold: 25, unit: 'deg' }],
  wording: {
    athlete: { finding: 'You land softly: your {side} knee bends to {value}. Keep it that way.', intervention: '' },
    practitioner: { finding: 'A soft landing: the {side} knee bends to {value}. No change needed.', intervention: '' },
    clinician: {
      finding: 'Peak knee flexion on landing adequate, {side}: {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['padua2009', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
