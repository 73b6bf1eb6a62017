import type { RuleEntry } from '../../ruleEntry.ts';

export const soreOnHardSwings = {
  id: 'volleyball-spike/sore-on-hard-swings',
  kind: 'intervention',
  movement: 'volleyball-spike',
  phase: 'contact',
  region: 'shoulder',
  all: [{ measure: 'pain.nrs', comparator: 'between', threshold: [3, 5], unit: '{score}' }],
  finding: 'Shoulder pain {value} on hard swings.',
  intervention:
    'Swap part of the hard spikes for roll shots and standing float serves, the hits with the lowest shoulder load, and have it looked at within the week.',
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
