import type { RuleEntry } from '../../ruleEntry.ts';

export const trunkOverPlantLeg = {
  id: 'sprint-cut/trunk-over-plant-leg',
  kind: 'intervention',
  movement: 'sprint-cut',
  phase: 'plant',
  region: 'whole-body',
  all: [{ measure: 'trunk.lateralLean', comparator: '>', threshold: 15, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your upper body leans over the leg you turn on: {value}.',
      intervention:
        'Make slow cuts that you know beforehand and lean where you want to go. Train your side. Surprise cuts come last.',
    },
    practitioner: {
      finding: 'The trunk leans over the plant leg in the cut: {value}.',
      intervention: 'Planned low-speed cuts with a trunk cue, lateral strength, unplanned cuts last.',
    },
    clinician: {
      finding: 'Lateral trunk lean over the plant leg: {value} (criterion above {threshold}).',
      intervention:
        'Preplanned low-speed cuts with a trunk cue; lateral trunk and hip strengthening; unplanned cuts last.',
    },
  },
  drill: 'planned-cuts',
  retest: { measure: 'trunk.lateralLean', afterDays: 42 },
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
