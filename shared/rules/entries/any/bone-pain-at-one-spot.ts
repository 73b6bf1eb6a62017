import type { RuleEntry } from '../../ruleEntry.ts';

export const bonePainAtOneSpot = {
  id: 'any/bone-pain-at-one-spot',
  kind: 'referral',
  movement: 'any',
  phase: 'session',
  region: 'lower-leg',
  all: [{ measure: 'flag.focalBonePain', comparator: 'is', threshold: true, unit: null }],
  finding: 'Bone pain at one spot in a runner or jumper.',
  intervention:
    'Stop running and jumping today; medical review before any impact. Pain in groin or front of thigh on hopping is urgent.',
  retest: null,
  loads: [],
  effects: [
    { condition: 'postpartum', effect: 'stop', change: 'Ask about energy intake and feeding.', unsafeFor: [] },
    { condition: 'pregnancy', effect: 'stop', change: 'Tell the obstetric provider.', unsafeFor: [] },
  ],
  sources: ['george2024', 'warden2014'],
  evidence: 'moderate',
  basis: 'published',
  defersTo: ['a sports or family physician'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
