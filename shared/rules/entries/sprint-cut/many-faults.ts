import type { RuleEntry } from '../../ruleEntry.ts';

export const manyFaults = {
  id: 'sprint-cut/many-faults',
  kind: 'intervention',
  movement: 'sprint-cut',
  phase: 'whole',
  region: 'whole-body',
  all: [{ measure: 'cut.score', comparator: '>=', threshold: 7, unit: '{points}' }],
  finding: 'Cutting technique is in the high-fault band: {value} of 11.',
  intervention: 'Six weeks of technique: braking step, trunk, foot placement, twice a week; then film again.',
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
