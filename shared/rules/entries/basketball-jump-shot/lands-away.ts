import type { RuleEntry } from '../../ruleEntry.ts';

export const landsAway = {
  id: 'basketball-jump-shot/lands-away',
  kind: 'intervention',
  movement: 'basketball-jump-shot',
  phase: 'inertia',
  region: 'whole-body',
  all: [{ measure: 'landing.drift', comparator: 'outside', threshold: [-30, 30], unit: 'cm' }],
  wording: {
    athlete: {
      finding: 'You land away from where you jumped: {value}.',
      intervention:
        'Practise stopping and setting your feet, jumping straight up and landing on both feet, without a ball.',
    },
    practitioner: {
      finding: 'Lands well away from the place of take-off: {value}.',
      intervention: 'Stop-and-set footwork, straight-up jumps and two-foot landings without a ball.',
    },
    clinician: {
      finding: 'Landing displacement outside {threshold}: {value}.',
      intervention: 'Stop-and-set footwork, vertical jumps and bilateral landings without a ball.',
    },
  },
  drill: 'straight-up-take-offs',
  retest: { measure: 'landing.drift', afterDays: 28 },
  loads: ['jumping', 'practice', 'trunk'],
  effects: [
    { condition: 'anterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'posterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'multidirectional-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'rotator-cuff', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'superior-labrum', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'acromioclavicular-joint', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'elbow-ulnar-collateral-ligament', effect: 'keep', change: '', unsafeFor: [] },
  ],
  sources: ['knudson1993', 'okazaki2015', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
