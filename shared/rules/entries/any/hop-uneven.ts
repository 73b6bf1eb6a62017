import type { RuleEntry } from '../../ruleEntry.ts';

export const hopUneven = {
  id: 'any/hop-uneven',
  kind: 'intervention',
  movement: 'any',
  phase: 'profile',
  region: 'knee',
  all: [{ measure: 'hop.lsi', comparator: '<', threshold: 90, unit: '%' }],
  wording: {
    athlete: {
      finding: 'You hop less far on one leg: {value} of the other one.',
      intervention: 'Get the weaker leg stronger first, before more hopping.',
    },
    practitioner: {
      finding: 'Hop symmetry under 90 %: {value}.',
      intervention: 'Single-leg strength before more hopping; compare with the leg’s own earlier values too.',
    },
    clinician: {
      finding: 'Hop limb symmetry index {value}, below {threshold}.',
      intervention: 'Unilateral strengthening before more hopping; compare with the limb’s own earlier values.',
    },
  },
  drill: 'one-leg-strength',
  retest: { measure: 'hop.lsi', afterDays: 42 },
  loads: ['leg-strength', 'practice'],
  effects: [
    {
      condition: 'anterior-cruciate-ligament',
      effect: 'replace',
      change:
        'No pivoting sport. Knee-extensor strength in the range the surgeon allows; hop tests only when the clinician allows.',
      plain:
        'No sport with turns. Train the front of your thigh as far as the surgeon allows. Hop tests only when the clinician allows.',
      unsafeFor: ['patellar-tendinopathy'],
    },
  ],
  eases: ['impact'],
  sources: ['reid2007', 'davies2020', 'grindem2016'],
  evidence: 'moderate',
  basis: 'published',
  defersTo: ['a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
