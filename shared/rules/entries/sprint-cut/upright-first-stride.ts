import type { RuleEntry } from '../../ruleEntry.ts';

export const uprightFirstStride = {
  id: 'sprint-cut/upright-first-stride',
  kind: 'intervention',
  movement: 'sprint-cut',
  phase: 'sprint',
  region: 'whole-body',
  all: [{ measure: 'trunk.lean', comparator: '<', threshold: 5, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your first stride away is upright: {value}.',
      intervention: 'Lean forward until you must run, and sprint three strides from a stop.',
    },
    practitioner: {
      finding: 'The first stride away is upright: {value}.',
      intervention: 'Falling starts and three-stride sprints from a stop.',
    },
    clinician: {
      finding: 'Reduced forward trunk inclination in the first stride: {value} (criterion below {threshold}).',
      intervention: 'Falling starts and three-stride accelerations from a stop.',
    },
  },
  drill: 'falling-starts',
  retest: { measure: 'trunk.lean', afterDays: 42 },
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
  sources: ['convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
