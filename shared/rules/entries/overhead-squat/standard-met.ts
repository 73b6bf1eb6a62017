import type { RuleEntry } from '../../ruleEntry.ts';

export const standardMet = {
  id: 'overhead-squat/standard-met',
  kind: 'confirmation',
  movement: 'overhead-squat',
  phase: 'whole',
  region: 'whole-body',
  all: [{ measure: 'squat.faultCount', comparator: 'is', threshold: 0, unit: '{errors}' }],
  wording: {
    athlete: {
      finding: 'Your squat met its standard. You may add weight if nothing in your history speaks against it.',
      intervention: '',
    },
    practitioner: {
      finding: 'The squat met its written standard. It may be loaded if the history allows.',
      intervention: '',
    },
    clinician: {
      finding: 'Written standard of the squat met. Loading permissible subject to the history.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [
    {
      condition: 'anterior-shoulder-instability',
      effect: 'modify',
      change: 'Loaded with a front hold only, never overhead.',
      unsafeFor: [],
    },
    { condition: 'low-back-pain', effect: 'modify', change: 'Load in small steps.', unsafeFor: [] },
  ],
  sources: ['bahr2016', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
