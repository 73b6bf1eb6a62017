import type { RuleEntry } from '../../ruleEntry.ts';

export const drillPushesShoulderBack = {
  id: 'any/drill-pushes-shoulder-back',
  kind: 'caution',
  movement: 'any',
  phase: 'profile',
  region: 'shoulder',
  all: [
    { measure: 'drill.loadedFlexAddIr', comparator: 'is', threshold: true, unit: null },
    { measure: 'history.posterior-shoulder-instability', comparator: 'is', threshold: true, unit: null },
  ],
  wording: {
    athlete: {
      finding: 'One planned exercise pushes your upper arm backward.',
      intervention: 'Leave that exercise out.',
    },
    practitioner: {
      finding: 'A planned drill pushes the head of the upper arm backward.',
      intervention: 'Take the drill out of the plan.',
    },
    clinician: {
      finding: 'Planned drill imposes a posterior humeral load with posterior instability on file.',
      intervention: 'Remove the drill from the programme.',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [
    {
      condition: 'posterior-shoulder-instability',
      effect: 'replace',
      change:
        'Rows, external rotation and raises in the plane of the shoulder blade in place of push-ups, bench lock-out, blocking and cross-body work.',
      plain:
        'Row, turn your arm out and lift it a little to the side. No push-ups, no bench press, no blocks and no work across your body.',
      unsafeFor: ['multidirectional-shoulder-instability'],
    },
  ],
  sources: ['watson2023', 'jaggi2017'],
  evidence: 'expert',
  basis: 'published',
  defersTo: ['a physiotherapist or athletic trainer', 'an orthopaedic or shoulder surgeon'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
