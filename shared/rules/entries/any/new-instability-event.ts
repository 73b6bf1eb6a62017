import type { RuleEntry } from '../../ruleEntry.ts';

export const newInstabilityEvent = {
  id: 'any/new-instability-event',
  kind: 'referral',
  movement: 'any',
  phase: 'profile',
  region: 'shoulder',
  all: [{ measure: 'flag.instabilityEvent', comparator: 'is', threshold: true, unit: null }],
  finding: 'The shoulder has slipped, come out or given way since the last visit.',
  intervention:
    'Stop overhead and contact work. Same-day emergency care if it is not back in place, numb, weak, cold or deformed; otherwise a clinician within days.',
  retest: null,
  loads: [],
  effects: [
    {
      condition: 'posterior-shoulder-instability',
      effect: 'stop',
      change: 'After a seizure or electric shock take it for a locked posterior dislocation until it has been imaged.',
      unsafeFor: [],
    },
  ],
  sources: ['olds2015', 'murphy2023', 'mitchell2005'],
  evidence: 'moderate',
  basis: 'published',
  defersTo: ['emergency services', 'a physiotherapist or athletic trainer', 'an orthopaedic or shoulder surgeon'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
