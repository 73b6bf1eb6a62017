import type { RuleEntry } from '../../ruleEntry.ts';

export const soreOnHardSwings = {
  id: 'volleyball-spike/sore-on-hard-swings',
  kind: 'intervention',
  movement: 'volleyball-spike',
  phase: 'contact',
  region: 'shoulder',
  all: [{ measure: 'pain.nrs', comparator: 'between', threshold: [3, 5], unit: '{score}' }],
  wording: {
    athlete: {
      finding: 'Your shoulder hurts on hard swings: {value}.',
      intervention:
        'Swap part of your hard spikes for soft roll shots and standing float serves. Have your shoulder looked at this week.',
    },
    practitioner: {
      finding: 'Shoulder pain {value} on hard swings.',
      intervention:
        'Swap part of the hard spikes for roll shots and standing float serves, the hits with the lowest shoulder load, and have it looked at within the week.',
    },
    clinician: {
      finding: 'Shoulder pain {value} on hard swings.',
      intervention:
        'Substitute part of maximal spikes by roll shots and standing float serves, the lowest shoulder loads; assessment within the week.',
    },
  },
  drill: 'fewer-hard-swings',
  retest: { measure: 'pain.nrs', afterDays: 7 },
  loads: ['throwing-overhead', 'practice'],
  effects: [
    {
      condition: 'anterior-shoulder-instability',
      effect: 'stop',
      change: 'No overhead hitting until cleared.',
      unsafeFor: [],
    },
    { condition: 'rotator-cuff', effect: 'modify', change: 'No swing at full speed.', unsafeFor: [] },
  ],
  eases: ['throwing'],
  sources: ['reeser2010', 'schwank2022', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
