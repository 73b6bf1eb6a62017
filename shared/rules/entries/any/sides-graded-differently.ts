import type { RuleEntry } from '../../ruleEntry.ts';

export const sidesGradedDifferently = {
  id: 'any/sides-graded-differently',
  kind: 'monitor',
  movement: 'any',
  phase: 'session',
  region: 'knee',
  all: [{ measure: 'grade.sidesDiffer', comparator: 'is', threshold: true, unit: null }],
  wording: {
    athlete: {
      finding: 'You did one test better on one side than on the other.',
      intervention: 'Do it again on another day. It does not mean that you will get hurt.',
    },
    practitioner: {
      finding: 'Left and right were graded differently in one test.',
      intervention:
        'Repeat on another day; if it stays, measure the joint that may explain it. It is no label of risk.',
    },
    clinician: {
      finding: 'Side-to-side difference in grade on one test.',
      intervention:
        'Repeat on another day; if persistent, measure the joint that may account for it. Not a risk label.',
    },
  },
  drill: null,
  retest: { measure: 'grade.sidesDiffer', afterDays: 7 },
  loads: ['practice'],
  effects: [
    { condition: 'anterior-cruciate-ligament', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'patellar-tendinopathy', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'ankle-sprain', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'hamstring', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'groin', effect: 'keep', change: '', unsafeFor: [] },
    {
      condition: 'bone-stress',
      effect: 'stop',
      change:
        'No impact. Off-feet conditioning only until the bone is not tender, walking is free of pain and the treating clinician agrees.',
      unsafeFor: [],
    },
  ],
  sources: ['bahr2016', 'bishop2018', 'convention'],
  evidence: 'expert',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
