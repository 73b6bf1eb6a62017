import type { RuleEntry } from '../../ruleEntry.ts';

export const drillImpactSoonAfterBirth = {
  id: 'any/drill-impact-soon-after-birth',
  kind: 'caution',
  movement: 'any',
  phase: 'profile',
  region: 'whole-body',
  all: [
    { measure: 'drill.impact', comparator: 'is', threshold: true, unit: null },
    { measure: 'history.weeksSincePostpartum', comparator: '<', threshold: 12, unit: 'wk' },
  ],
  wording: {
    athlete: {
      finding: 'Running or jumping is planned before about twelve weeks after birth.',
      intervention: 'Leave that exercise out unless your pelvic-health clinician has cleared it.',
    },
    practitioner: {
      finding: 'Impact is planned before about twelve weeks after birth.',
      intervention: 'Take the drill out of the plan unless the pelvic-health clinician has cleared it.',
    },
    clinician: {
      finding: 'Impact planned before about twelve weeks postpartum.',
      intervention: 'Remove the drill unless cleared by the pelvic-health clinician.',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [
    {
      condition: 'postpartum',
      effect: 'replace',
      change:
        'Walking, pelvic-floor and strength work until about 12 weeks and a pelvic-health check; stop on heaviness, leaking or bleeding.',
      plain:
        'Walk and do pelvic-floor and strength work until about 12 weeks and a check of your pelvic floor. Stop if you feel heavy, leak or bleed.',
      unsafeFor: ['bone-stress'],
    },
  ],
  sources: ['goom2019'],
  evidence: 'expert',
  basis: 'published',
  defersTo: ['the obstetric provider or a pelvic-health physiotherapist'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
