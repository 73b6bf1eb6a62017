import type { RuleEntry } from '../../ruleEntry.ts';

export const drillPivotsBeforeClearance = {
  id: 'any/drill-pivots-before-clearance',
  kind: 'caution',
  movement: 'any',
  phase: 'profile',
  region: 'knee',
  all: [
    { measure: 'drill.pivotContact', comparator: 'is', threshold: true, unit: null },
    { measure: 'history.anterior-cruciate-ligament', comparator: 'is', threshold: true, unit: null },
  ],
  wording: {
    athlete: {
      finding: 'Turning or contact is planned before your knee is cleared.',
      intervention: 'Leave that exercise out.',
    },
    practitioner: {
      finding: 'Pivoting or contact is planned before the knee is cleared.',
      intervention: 'Take the drill out of the plan.',
    },
    clinician: {
      finding: 'Pivoting or contact planned before clearance of an anterior cruciate ligament injury.',
      intervention: 'Remove the drill from the programme.',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [
    {
      condition: 'anterior-cruciate-ligament',
      effect: 'replace',
      change:
        'Planned straight-line and two-leg work; pivoting only after nine months, strength and hop of at least 90 % and the agreement of the team.',
      plain:
        'Work in a straight line and on both legs, as planned before. Turn on that leg only after nine months, with strength and hop at 90 % or more, and when your surgeon agrees.',
      unsafeFor: [
        'patellar-tendinopathy',
        'ankle-sprain',
        'hamstring',
        'groin',
        'bone-stress',
        'pregnancy',
        'postpartum',
      ],
    },
  ],
  sources: ['grindem2016', 'grindem2020'],
  evidence: 'moderate',
  basis: 'published',
  defersTo: ['a physiotherapist or athletic trainer', 'an orthopaedic or shoulder surgeon'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
