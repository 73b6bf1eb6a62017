import type { RuleEntry } from '../../ruleEntry.ts';

export const finishCutShort = {
  id: 'tennis-serve/finish-cut-short',
  kind: 'intervention',
  movement: 'tennis-serve',
  phase: 'deceleration',
  region: 'shoulder',
  all: [{ measure: 'trunk.finishFlexion', comparator: '<', threshold: 20, unit: 'deg' }],
  finding: 'The follow-through is cut short: the trunk finishes at {value}.',
  intervention:
    'Let trunk and racket come through after contact, then slow-lowering external rotation with a band: 3 sets of 8, twice a week.',
  retest: { measure: 'trunk.finishFlexion', afterDays: 28 },
  loads: ['throwing-overhead', 'trunk', 'practice'],
  effects: [
    {
      condition: 'posterior-shoulder-instability',
      effect: 'replace',
      change:
        'No kick serves and no full finish across the body. Pulling and external rotation with the arm at the side.',
      unsafeFor: ['multidirectional-shoulder-instability'],
    },
  ],
  sources: ['kovacs2011', 'convention'],
  evidence: 'expert',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope', 'a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
