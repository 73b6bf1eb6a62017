import type { RuleEntry } from '../../ruleEntry.ts';

export const drillDragsOnLooseShoulder = {
  id: 'any/drill-drags-on-loose-shoulder',
  kind: 'caution',
  movement: 'any',
  phase: 'profile',
  region: 'shoulder',
  all: [
    { measure: 'drill.traction', comparator: 'is', threshold: true, unit: null },
    { measure: 'history.multidirectional-shoulder-instability', comparator: 'is', threshold: true, unit: null },
  ],
  finding: 'A planned drill drags on or stretches a loose shoulder.',
  intervention: 'Take the drill out of the plan.',
  retest: null,
  loads: [],
  effects: [
    {
      condition: 'multidirectional-shoulder-instability',
      effect: 'replace',
      change:
        'Staged control of shoulder blade and cuff from the mid-range, in place of hangs, heavy carries, dips and stretching.',
      unsafeFor: [],
    },
  ],
  sources: ['watson2016', 'jaggi2017'],
  evidence: 'moderate',
  basis: 'published',
  defersTo: ['a physiotherapist or athletic trainer', 'an orthopaedic or shoulder surgeon'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
