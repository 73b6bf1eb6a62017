import type { RuleEntry } from '../../ruleEntry.ts';

export const apprehensionRecorded = {
  id: 'any/apprehension-recorded',
  kind: 'referral',
  movement: 'any',
  phase: 'profile',
  region: 'shoulder',
  all: [{ measure: 'flag.apprehension', comparator: 'is', threshold: true, unit: null }],
  wording: {
    athlete: {
      finding: 'It is on record that your shoulder feels as if it could slip.',
      intervention:
        'No work overhead, no contact and no long reach. First make a plan with a doctor or physiotherapist.',
    },
    practitioner: {
      finding: 'A clinician recorded apprehension of the shoulder.',
      intervention:
        'No overhead, contact or end-range work until there is a clinician’s plan; complete the injury record and consider a referral letter.',
    },
    clinician: {
      finding: 'Apprehension of the shoulder recorded by a clinician.',
      intervention:
        'No overhead, contact or end-range loading pending a management plan; complete the injury record and consider referral.',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['lo2004', 'eshoj2018', 'olds2015'],
  evidence: 'moderate',
  basis: 'published',
  defersTo: ['a physiotherapist or athletic trainer', 'an orthopaedic or shoulder surgeon'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
