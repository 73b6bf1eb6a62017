import type { RuleEntry } from '../../ruleEntry.ts';

export const kneeInwardOnDip = {
  id: 'basketball-jump-shot/knee-inward-on-dip',
  kind: 'intervention',
  movement: 'basketball-jump-shot',
  phase: 'preparation',
  region: 'knee',
  all: [{ measure: 'fppa', comparator: '>', threshold: { female: 13, male: 8 }, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your {side} knee moves inward as you dip: {value}. It should stay over your foot.',
      intervention:
        'Practise keeping your knee over your foot in front of a mirror or on film. Train each leg by itself.',
    },
    practitioner: {
      finding: 'The {side} knee moves inward on the dip: {value}, past {threshold}.',
      intervention: 'Hip and foot control with a mirror or film, and single-leg strength.',
    },
    clinician: {
      finding: 'Increased frontal-plane projection angle on the dip, {side}: {value} (criterion above {threshold}).',
      intervention: 'Hip and foot neuromuscular control with visual feedback; single-leg strengthening.',
    },
  },
  drill: 'knee-over-foot',
  retest: { measure: 'fppa', afterDays: 42 },
  loads: ['leg-strength', 'practice'],
  effects: [],
  sources: ['herrington2010', 'munro2012', 'schurr2017'],
  evidence: 'limited',
  basis: 'published',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
