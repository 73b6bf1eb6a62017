import type { RuleEntry } from '../../ruleEntry.ts';

export const lowInSquad = {
  id: 'countermovement-jump/low-in-squad',
  kind: 'intervention',
  movement: 'countermovement-jump',
  phase: 'flight',
  region: 'whole-body',
  all: [{ measure: 'cmj.percentile', comparator: '<', threshold: 25, unit: '{percentile}' }],
  wording: {
    athlete: {
      finding: 'Your jump is among the lower quarter of your team on this test.',
      intervention: 'Get your legs stronger first. Jump training comes after that.',
    },
    practitioner: {
      finding: 'Jump height in the lowest quarter of the own squad.',
      intervention: 'Leg strength block first, then jump training.',
    },
    clinician: {
      finding: 'Jump height below the 25th percentile of the own squad, same device and method: percentile {value}.',
      intervention: 'Lower-limb strength block, followed by jump training.',
    },
  },
  drill: 'leg-strength-block',
  retest: { measure: 'cmj.percentile', afterDays: 56 },
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
  sources: ['haugen2021', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
