import type { RuleEntry } from '../../ruleEntry.ts';

export const kneeInward = {
  id: 'overhead-squat/knee-inward',
  kind: 'intervention',
  movement: 'overhead-squat',
  phase: 'ascent',
  region: 'knee',
  all: [{ measure: 'fppa', comparator: '>', threshold: 10, unit: 'deg' }],
  wording: {
    athlete: {
      finding:
        'Your {side} knee moves inward on the way up: {value}. Nobody has published how much is usual in this squat.',
      intervention:
        'Practise keeping your knee over your foot with a band or in front of a mirror. Then train each leg by itself.',
    },
    practitioner: {
      finding: 'The {side} knee moves inward on the way up: {value}. There is no published band for this squat.',
      intervention: 'Hip and foot control with a band or mirror, then single-leg strength.',
    },
    clinician: {
      finding: 'Frontal-plane projection angle on the ascent, {side}: {value}. No published reference for this squat.',
      intervention: 'Hip and foot neuromuscular control with a band or mirror, then single-leg strengthening.',
    },
  },
  drill: 'knee-over-foot',
  retest: { measure: 'fppa', afterDays: 42 },
  loads: ['leg-strength', 'practice'],
  effects: [],
  sources: ['herrington2010', 'munro2012', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
