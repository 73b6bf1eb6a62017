import type { RuleEntry } from '../../ruleEntry.ts';

export const noLegDrive = {
  id: 'tennis-serve/no-leg-drive',
  kind: 'intervention',
  movement: 'tennis-serve',
  phase: 'loading',
  region: 'whole-body',
  all: [{ measure: 'knee.flexPeak', comparator: '<', threshold: 10, unit: 'deg' }],
  finding: 'The {side} knee hardly bends in loading: {value}.',
  intervention: 'Leg drive with the arms low, and strength in squat and split squat: 3 sets of 6, twice a week.',
  retest: { measure: 'knee.flexPeak', afterDays: 42 },
  loads: ['leg-strength', 'jumping', 'trunk', 'effort'],
  effects: [
    { condition: 'anterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'posterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'multidirectional-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'rotator-cuff', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'superior-labrum', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'acromioclavicular-joint', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'elbow-ulnar-collateral-ligament', effect: 'keep', change: '', unsafeFor: [] },
  ],
  sources: ['elliott2003', 'kovacs2011', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
