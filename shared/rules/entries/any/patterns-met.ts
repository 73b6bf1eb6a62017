import type { RuleEntry } from '../../ruleEntry.ts';

export const patternsMet = {
  id: 'any/patterns-met',
  kind: 'confirmation',
  movement: 'any',
  phase: 'session',
  region: 'whole-body',
  all: [
    { measure: 'grade.lowest', comparator: 'is', threshold: 'met', unit: null },
    { measure: 'grade.sidesDiffer', comparator: 'is', threshold: false, unit: null },
  ],
  wording: {
    athlete: { finding: 'You met every graded test on both sides. Keep training as you do.', intervention: '' },
    practitioner: {
      finding:
        'All graded tests met their standard on both sides. Keep current training and screen again on the planned day.',
      intervention: '',
    },
    clinician: {
      finding: 'All graded tests met bilaterally. No intervention indicated; rescreen as planned.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['bahr2016', 'convention'],
  evidence: 'expert',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
