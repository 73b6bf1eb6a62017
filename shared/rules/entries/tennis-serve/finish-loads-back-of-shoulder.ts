import type { RuleEntry } from '../../ruleEntry.ts';

export const finishLoadsBackOfShoulder = {
  id: 'tennis-serve/finish-loads-back-of-shoulder',
  kind: 'caution',
  movement: 'tennis-serve',
  phase: 'deceleration',
  region: 'shoulder',
  all: [{ measure: 'history.posterior-shoulder-instability', comparator: 'is', threshold: true, unit: null }],
  finding: 'The finish of the serve loads the position that stresses the back of the shoulder.',
  intervention: 'Serve only if cleared; begin with few, flat serves.',
  retest: null,
  loads: [],
  effects: [
    {
      condition: 'posterior-shoulder-instability',
      effect: 'replace',
      change:
        'No kick serves, backhand volleys or full finish across the body. Pulling and external rotation work with the arm at the side.',
      unsafeFor: ['multidirectional-shoulder-instability'],
    },
  ],
  sources: ['watson2023'],
  evidence: 'expert',
  basis: 'published',
  defersTo: ['a physiotherapist or athletic trainer', 'an orthopaedic or shoulder surgeon'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
