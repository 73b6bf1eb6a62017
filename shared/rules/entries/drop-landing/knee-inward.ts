import type { RuleEntry } from '../../ruleEntry.ts';

export const kneeInward = {
  id: 'drop-landing/knee-inward',
  kind: 'intervention',
  movement: 'drop-landing',
  phase: 'absorption',
  region: 'knee',
  all: [{ measure: 'fppa', comparator: '>', threshold: { female: 13, male: 8 }, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your {side} knee moves inward when you land: {value}. It should stay over your foot.',
      intervention:
        'Land from a low box in front of a mirror or on film and keep your knee over your foot. Train your hips and middle.',
    },
    practitioner: {
      finding: 'The {side} knee moves inward on landing: {value}, past {threshold}.',
      intervention: 'Hip and trunk strength, landings led by film or mirror from a low box, and a look at ankle bend.',
    },
    clinician: {
      finding: 'Increased frontal-plane projection angle on landing, {side}: {value} (criterion above {threshold}).',
      intervention: 'Hip and trunk strengthening; low-box landings with visual feedback; assess dorsiflexion.',
    },
  },
  drill: 'landings-with-mirror',
  retest: { measure: 'fppa', afterDays: 42 },
  loads: ['leg-strength', 'jumping', 'practice'],
  effects: [],
  sources: ['herrington2010', 'munro2012', 'schurr2017', 'straub2022'],
  evidence: 'limited',
  basis: 'published',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
