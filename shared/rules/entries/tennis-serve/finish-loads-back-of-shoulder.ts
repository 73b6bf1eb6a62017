import type { RuleEntry } from '../../ruleEntry.ts';

export const finishLoadsBackOfShoulder = {
  id: 'tennis-serve/finish-loads-back-of-shoulder',
  kind: 'caution',
  movement: 'tennis-serve',
  phase: 'deceleration',
  region: 'shoulder',
  all: [{ measure: 'history.posterior-shoulder-instability', comparator: 'is', threshold: true, unit: null }],
  wording: {
    athlete: {
      finding: 'The end of the serve loads the back of your shoulder, which was hurt.',
      intervention: 'Serve only if you are cleared. Begin with few, flat serves.',
    },
    practitioner: {
      finding: 'The finish of the serve loads the position that stresses the back of the shoulder.',
      intervention: 'Serve only if cleared; begin with few, flat serves.',
    },
    clinician: {
      finding: 'Follow-through loads the posterior shoulder with posterior instability on file.',
      intervention: 'Serve only if cleared; resume with few, flat serves.',
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
        'No kick serves, backhand volleys or full finish across the body. Pulling and external rotation work with the arm at the side.',
      plain:
        'No kick serves, no backhand volleys and no full finish across your body. Pull, and turn your arm out, with the elbow at your side.',
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
