import type { RuleEntry } from '../../ruleEntry.ts';

export const trunkNotOverFeet = {
  id: 'drop-landing/trunk-not-over-feet',
  kind: 'intervention',
  movement: 'drop-landing',
  phase: 'stabilisation',
  region: 'whole-body',
  all: [{ measure: 'trunk.lean', comparator: 'outside', threshold: [-10, 45], unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your upper body ends away from your feet: {value} from straight up.',
      intervention: 'Land from a step and stand still for three seconds. Use a low box later.',
    },
    practitioner: {
      finding: 'The trunk comes to rest away from the feet: {value} from the vertical.',
      intervention: 'Land and hold for three seconds from a step, then from a low box.',
    },
    clinician: {
      finding: 'Trunk inclination at rest outside {threshold}: {value}.',
      intervention: 'Land-and-hold for three seconds from a step, then a low box.',
    },
  },
  drill: 'land-and-hold',
  retest: { measure: 'trunk.lean', afterDays: 28 },
  loads: ['jumping', 'trunk', 'practice'],
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
