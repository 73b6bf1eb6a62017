import type { RuleEntry } from '../../ruleEntry.ts';

export const straightKneeAtContact = {
  id: 'drop-landing/straight-knee-at-contact',
  kind: 'intervention',
  movement: 'drop-landing',
  phase: 'initial-contact',
  region: 'knee',
  all: [{ measure: 'knee.flexAtContact', comparator: '<', threshold: 30, unit: 'deg' }],
  finding: 'The {side} knee is nearly straight as the foot lands: {value}.',
  intervention: 'Softer, quieter landings from a low box, then higher: 3 sets of 5, twice a week.',
  retest: { measure: 'knee.flexAtContact', afterDays: 28 },
  loads: ['jumping', 'effort'],
  effects: [
    {
      condition: 'patellar-tendinopathy',
      effect: 'replace',
      change:
        'No landings while the tendon is in rehabilitation. Isometric, then slow heavy knee-extensor work; deep knee bend is not chased.',
      unsafeFor: ['anterior-cruciate-ligament', 'pregnancy'],
    },
  ],
  sources: ['padua2009', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
