import type { RuleEntry } from '../../ruleEntry.ts';

export const drillLoadsArmOutAndBack = {
  id: 'any/drill-loads-arm-out-and-back',
  kind: 'caution',
  movement: 'any',
  phase: 'profile',
  region: 'shoulder',
  all: [
    { measure: 'drill.loadedAbdEr', comparator: 'is', threshold: true, unit: null },
    { measure: 'history.anterior-shoulder-instability', comparator: 'is', threshold: true, unit: null },
  ],
  wording: {
    athlete: {
      finding: 'One planned exercise puts your arm where your shoulder slipped out.',
      intervention: 'Leave that exercise out.',
    },
    practitioner: {
      finding: 'A planned drill loads the position of an anterior dislocation.',
      intervention: 'Take the drill out of the plan.',
    },
    clinician: {
      finding: 'Planned drill loads combined abduction and external rotation with anterior instability on file.',
      intervention: 'Remove the drill from the programme.',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [
    {
      condition: 'anterior-shoulder-instability',
      effect: 'replace',
      change:
        'Narrow short-range floor press, neutral-grip rows, front-held squat and rotation work with the arm at the side, in place of wide or behind-neck pressing, flyes and low-bar squats; no cocked throws.',
      plain:
        'Short narrow press lying on the floor, rows, squat with the weight in front, turning your arm with the elbow at your side. No wide press, no press behind your neck, no throws.',
      unsafeFor: ['posterior-shoulder-instability', 'multidirectional-shoulder-instability'],
    },
  ],
  sources: ['kolber2010', 'durall2001', 'oldsUhl2024', 'jaggi2017', 'convention'],
  evidence: 'expert',
  basis: 'convention',
  defersTo: ['a physiotherapist or athletic trainer', 'an orthopaedic or shoulder surgeon'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
