import type { RuleEntry } from '../../ruleEntry.ts';

export const noLegDrive = {
  id: 'tennis-serve/no-leg-drive',
  kind: 'intervention',
  movement: 'tennis-serve',
  phase: 'loading',
  region: 'whole-body',
  all: [{ measure: 'knee.flexPeak', comparator: '<', threshold: 10, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your {side} knee hardly bends before you hit: {value}.',
      intervention: 'Bend and push up from your legs with your arms low. Train squats and split squats.',
    },
    practitioner: {
      finding: 'The {side} knee hardly bends in loading: {value}.',
      intervention: 'Leg drive with the arms low, and strength in squat and split squat.',
    },
    clinician: {
      finding: 'Minimal knee flexion in loading, {side}: {value} (criterion below {threshold}).',
      intervention: 'Leg-drive practice with arms low; squat and split-squat strengthening.',
    },
  },
  drill: 'leg-drive',
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
