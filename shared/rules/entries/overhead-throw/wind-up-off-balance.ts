import type { RuleEntry } from '../../ruleEntry.ts';

export const windUpOffBalance = {
  id: 'overhead-throw/wind-up-off-balance',
  kind: 'intervention',
  movement: 'overhead-throw',
  phase: 'wind-up',
  region: 'whole-body',
  all: [{ measure: 'trunk.lean', comparator: 'outside', threshold: [-15, 15], unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your upper body leans as you wind up: {value} from straight up.',
      intervention: 'Lift your front leg and hold your balance for two seconds, without a ball, arms low.',
    },
    practitioner: {
      finding: 'The trunk leans away from the vertical in the wind-up: {value}.',
      intervention: 'Hold the balance point for two seconds without a ball, arms low.',
    },
    clinician: {
      finding: 'Trunk inclination in the wind-up outside {threshold}: {value}.',
      intervention: 'Static balance at the balance point for two seconds, without a ball, arms low.',
    },
  },
  drill: 'balance-point',
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
