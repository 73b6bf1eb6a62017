import type { RuleEntry } from '../../ruleEntry.ts';

export const straightKneeAtContact = {
  id: 'drop-landing/straight-knee-at-contact',
  kind: 'intervention',
  movement: 'drop-landing',
  phase: 'initial-contact',
  region: 'knee',
  all: [{ measure: 'knee.flexAtContact', comparator: '<', threshold: 30, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your {side} knee is almost straight when your foot lands: {value}.',
      intervention: 'Land softly and quietly with bent knees: first from a low box, then from a higher one.',
    },
    practitioner: {
      finding: 'The {side} knee is nearly straight as the foot lands: {value}.',
      intervention: 'Softer, quieter landings from a low box, then higher.',
    },
    clinician: {
      finding: 'Near-extended knee at initial contact, {side}: {value} of flexion (criterion below {threshold}).',
      intervention: 'Landing retraining from a low box, cueing knee flexion before contact; height progressed.',
    },
  },
  drill: 'quiet-landings',
  retest: { measure: 'knee.flexAtContact', afterDays: 28 },
  loads: ['jumping', 'effort'],
  effects: [
    {
      condition: 'patellar-tendinopathy',
      effect: 'replace',
      change:
        'No landings while the tendon is in rehabilitation. Isometric, then slow heavy knee-extensor work; deep knee bend is not chased.',
      plain:
        'No landings while your knee gets well. First hold it still against weight, then train the front of your thigh slowly and heavily. Bend your knee no deeper than is easy.',
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
