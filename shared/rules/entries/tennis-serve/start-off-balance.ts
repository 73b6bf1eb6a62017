import type { RuleEntry } from '../../ruleEntry.ts';

export const startOffBalance = {
  id: 'tennis-serve/start-off-balance',
  kind: 'intervention',
  movement: 'tennis-serve',
  phase: 'start',
  region: 'whole-body',
  all: [{ measure: 'trunk.lean', comparator: 'outside', threshold: [-15, 15], unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your upper body leans before the toss: {value} from straight up.',
      intervention: 'Practise how you stand and start, slowly, with your weight on both feet, without a ball.',
    },
    practitioner: {
      finding: 'The trunk leans away from the vertical before the toss: {value}.',
      intervention: 'Stance and first movement slowly, weight over both feet, without a ball.',
    },
    clinician: {
      finding: 'Trunk inclination before the toss outside {threshold}: {value}.',
      intervention: 'Stance and initiation at low speed, weight over both feet, without a ball.',
    },
  },
  drill: 'slow-start',
  retest: { measure: 'trunk.lean', afterDays: 28 },
  loads: ['leg-strength', 'trunk', 'practice'],
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
