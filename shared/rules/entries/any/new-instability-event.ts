import type { RuleEntry } from '../../ruleEntry.ts';

export const newInstabilityEvent = {
  id: 'any/new-instability-event',
  kind: 'referral',
  movement: 'any',
  phase: 'profile',
  region: 'shoulder',
  all: [{ measure: 'flag.instabilityEvent', comparator: 'is', threshold: true, unit: null }],
  wording: {
    athlete: {
      finding: 'Your shoulder has slipped, come out or given way since the last visit.',
      intervention:
        'No overhead and no contact work. Go to emergency care today if it is not back in place, numb, weak, cold or looks wrong. Otherwise see a doctor or physiotherapist within days.',
    },
    practitioner: {
      finding: 'The shoulder has slipped, come out or given way since the last visit.',
      intervention:
        'Stop overhead and contact work. Same-day emergency care if it is not back in place, numb, weak, cold or deformed; otherwise a clinician within days.',
    },
    clinician: {
      finding: 'New shoulder instability event since the last visit.',
      intervention:
        'No overhead or contact work. Same-day emergency care if unreduced, or with sensory, motor, vascular or bony signs; otherwise clinical review within days.',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [
    {
      condition: 'posterior-shoulder-instability',
      effect: 'stop',
      change: 'After a seizure or electric shock take it for a locked posterior dislocation until it has been imaged.',
      plain: 'After a fit or an electric shock go to emergency care. Your shoulder may still be out at the back.',
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
