import type { RuleEntry } from '../../ruleEntry.ts';

export const apprehensionRecorded = {
  id: 'any/apprehension-recorded',
  kind: 'referral',
  movement: 'any',
  phase: 'profile',
  region: 'shoulder',
  all: [{ measure: 'flag.apprehension', comparator: 'is', threshold: true, unit: null }],
  finding: 'A clinician recorded apprehension of the shoulder.',
  intervention:
    'No overhead, contact or end-range work until there is a clinician’s plan; complete the injury record and consider a referral letter.',
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
