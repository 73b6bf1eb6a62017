import type { RuleEntry } from '../../ruleEntry.ts';

export const frontReachDiffers = {
  id: 'any/front-reach-differs',
  kind: 'monitor',
  movement: 'any',
  phase: 'profile',
  region: 'ankle',
  all: [{ measure: 'reach.anteriorDiff', comparator: '>', threshold: 4, unit: 'cm' }],
  wording: {
    athlete: {
      finding: 'You reach farther forward on one leg than on the other: by {value}.',
      intervention: 'Do it again after some practice. Many healthy people differ as much.',
    },
    practitioner: {
      finding: 'The front reach differs by {value} between the legs.',
      intervention:
        'Repeat with practice trials; if it stays, look at ankle bend and balance. A third of healthy people are over this line.',
    },
    clinician: {
      finding: 'Anterior reach asymmetry: {value} (criterion above {threshold}).',
      intervention:
        'Repeat after familiarisation; if persistent, assess dorsiflexion and balance. A third of healthy people exceed this line.',
    },
  },
  drill: null,
  retest: { measure: 'reach.anteriorDiff', afterDays: 7 },
  loads: ['practice'],
  effects: [
    { condition: 'ankle-sprain', effect: 'modify', change: 'No reach while it hurts.', unsafeFor: [] },
    {
      condition: 'anterior-cruciate-ligament',
      effect: 'modify',
      change: 'No reach beyond what the surgical team allows.',
      unsafeFor: [],
    },
    {
      condition: 'bone-stress',
      effect: 'stop',
      change:
        'No impact. Off-feet conditioning only until the bone is not tender, walking is free of pain and the treating clinician agrees.',
      unsafeFor: [],
    },
    { condition: 'patellar-tendinopathy', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'hamstring', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'groin', effect: 'keep', change: '', unsafeFor: [] },
  ],
  sources: ['plisky2006', 'brumitt2019', 'shaffer2013'],
  evidence: 'limited',
  basis: 'published',
  defersTo: ['a qualified coach, within scope', 'a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
