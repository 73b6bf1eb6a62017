import type { RuleEntry } from '../../ruleEntry.ts';

export const drillThrowsBeforeElbowCleared = {
  id: 'any/drill-throws-before-elbow-cleared',
  kind: 'caution',
  movement: 'any',
  phase: 'profile',
  region: 'elbow',
  all: [
    { measure: 'drill.weightedThrow', comparator: 'is', threshold: true, unit: null },
    { measure: 'history.elbow-ulnar-collateral-ligament', comparator: 'is', threshold: true, unit: null },
  ],
  wording: {
    athlete: {
      finding: 'Heavy or long throws are planned before your elbow is cleared.',
      intervention: 'Leave that exercise out.',
    },
    practitioner: {
      finding: 'Heavy or long throwing is planned with an elbow that is not cleared.',
      intervention: 'Take the drill out of the plan.',
    },
    clinician: {
      finding: 'Weighted or long-distance throwing planned with an uncleared ulnar collateral ligament injury.',
      intervention: 'Remove the drill from the programme.',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [
    {
      condition: 'elbow-ulnar-collateral-ligament',
      effect: 'replace',
      change: 'Leg, cuff and forearm-flexor work; graded throwing only after clearance.',
      plain:
        'Train your legs, turning your arm and your grip. Throwing comes back step by step, only when you are cleared.',
      unsafeFor: ['multidirectional-shoulder-instability'],
    },
  ],
  sources: ['reinold2018', 'redler2016'],
  evidence: 'moderate',
  basis: 'published',
  defersTo: ['a physiotherapist or athletic trainer', 'an orthopaedic or shoulder surgeon'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
