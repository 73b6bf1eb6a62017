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
  wording: {
    athlete: {
      finding: 'One planned exercise pulls on or stretches your loose shoulder.',
      intervention: 'Leave that exercise out.',
    },
    practitioner: {
      finding: 'A planned drill drags on or stretches a loose shoulder.',
      intervention: 'Take the drill out of the plan.',
    },
    clinician: {
      finding: 'Planned drill imposes traction or capsular stretch with multidirectional instability on file.',
      intervention: 'Remove the drill from the programme.',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [
    {
      condition: 'multidirectional-shoulder-instability',
      effect: 'replace',
      change:
        'Staged control of shoulder blade and cuff from the mid-range, in place of hangs, heavy carries, dips and stretching.',
      plain:
        'Learn to hold your shoulder blade and arm steady, step by step from the middle of the movement. No hanging, no heavy loads, no dips and no stretching.',
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
