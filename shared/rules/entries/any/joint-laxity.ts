import type { RuleEntry } from '../../ruleEntry.ts';

export const jointLaxity = {
  id: 'any/joint-laxity',
  kind: 'monitor',
  movement: 'any',
  phase: 'profile',
  region: 'shoulder',
  all: [{ measure: 'hyper.beightonOverCut', comparator: '>=', threshold: 0, unit: '{points}' }],
  wording: {
    athlete: {
      finding: 'Your joints bend farther than most. That is how you are built and not an illness.',
      intervention: 'Train strength and control more than stretching. Say if a joint slips or gives way.',
    },
    practitioner: {
      finding: 'Joint laxity at or over the cut-off for this age. Laxity is a trait; instability is a symptom.',
      intervention:
        'Favour strength and control over stretching, and ask about slipping or giving way. A score alone is no diagnosis.',
    },
    clinician: {
      finding:
        'Generalised joint laxity at or over the cut-off for this age. Laxity is a trait; instability is a symptom.',
      intervention:
        'Strength and control over stretching; enquire about instability symptoms. A score alone is not diagnostic.',
    },
  },
  drill: null,
  retest: null,
  loads: ['practice'],
  effects: [
    {
      condition: 'anterior-shoulder-instability',
      effect: 'modify',
      change: 'No shoulder stretching at all.',
      unsafeFor: [],
    },
    {
      condition: 'multidirectional-shoulder-instability',
      effect: 'replace',
      change: 'No end-range stretching; a clinician leads the programme.',
      plain: 'No stretching to the end. A clinician leads what you do.',
      unsafeFor: [],
    },
    { condition: 'posterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'rotator-cuff', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'superior-labrum', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'acromioclavicular-joint', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'elbow-ulnar-collateral-ligament', effect: 'keep', change: '', unsafeFor: [] },
  ],
  sources: ['malfait2017', 'singh2017', 'malek2021', 'cameron2010'],
  evidence: 'moderate',
  basis: 'published',
  defersTo: ['a physiotherapist or athletic trainer', 'a sports or family physician'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
