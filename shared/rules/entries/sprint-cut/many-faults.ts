import type { RuleEntry } from '../../ruleEntry.ts';

export const manyFaults = {
  id: 'sprint-cut/many-faults',
  kind: 'intervention',
  movement: 'sprint-cut',
  phase: 'whole',
  region: 'whole-body',
  all: [{ measure: 'cut.score', comparator: '>=', threshold: 7, unit: '{points}' }],
  wording: {
    athlete: {
      finding: 'Your cut shows many of the listed mistakes: {value} of 11.',
      intervention:
        'Practise how you cut: brake on the step before, keep your upper body steady, place your foot well. Then film again.',
    },
    practitioner: {
      finding: 'Cutting technique is in the high-fault band: {value} of 11.',
      intervention: 'Cutting technique: braking step, trunk, foot placement; then film again.',
    },
    clinician: {
      finding: 'Cutting score in the high-fault band: {value} of 11.',
      intervention: 'Cutting technique: penultimate braking, trunk control, foot placement; then film again.',
    },
  },
  drill: 'cutting-technique',
  retest: { measure: 'cut.score', afterDays: 42 },
  loads: ['running', 'trunk', 'effort'],
  effects: [
    { condition: 'anterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'posterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'multidirectional-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'rotator-cuff', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'superior-labrum', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'acromioclavicular-joint', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'elbow-ulnar-collateral-ligament', effect: 'keep', change: '', unsafeFor: [] },
  ],
  sources: ['dosSantos2019', 'dosSantos2021', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
