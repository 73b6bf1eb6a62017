import type { RuleEntry } from '../../ruleEntry.ts';

export const hopEven = {
  id: 'any/hop-even',
  kind: 'confirmation',
  movement: 'any',
  phase: 'profile',
  region: 'knee',
  all: [{ measure: 'hop.lsi', comparator: '>=', threshold: 90, unit: '%' }],
  wording: {
    athlete: {
      finding: 'You hop almost as far on both legs: {value}. This alone does not mean you may go back to sport.',
      intervention: '',
    },
    practitioner: {
      finding: 'Hop symmetry {value}. No change needed; this is no clearance to return to sport.',
      intervention: '',
    },
    clinician: {
      finding: 'Hop limb symmetry index {value}. No intervention indicated; not a return-to-sport clearance.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [
    {
      condition: 'anterior-cruciate-ligament',
      effect: 'modify',
      change: 'Strength of at least 90 %, time and a clinician’s clearance are still needed.',
      unsafeFor: [],
    },
  ],
  sources: ['reid2007', 'grindem2020', 'davies2020'],
  evidence: 'moderate',
  basis: 'published',
  defersTo: ['a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
