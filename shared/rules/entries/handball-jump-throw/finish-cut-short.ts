import type { RuleEntry } from '../../ruleEntry.ts';

export const finishCutShort = {
  id: 'handball-jump-throw/finish-cut-short',
  kind: 'intervention',
  movement: 'handball-jump-throw',
  phase: 'follow-through-and-landing',
  region: 'shoulder',
  all: [{ measure: 'trunk.finishFlexion', comparator: '<', threshold: 20, unit: 'deg' }],
  finding: 'The follow-through is cut short: the trunk finishes at {value}.',
  intervention:
    'Let trunk and arm come through after release, then slow-lowering external rotation with a band: 3 sets of 8, twice a week.',
  retest: { measure: 'trunk.finishFlexion', afterDays: 28 },
  loads: ['throwing-overhead', 'trunk', 'practice'],
  effects: [
    {
      condition: 'posterior-shoulder-instability',
      effect: 'replace',
      change:
        'No finish across the body at speed and no catching drills. Slow external rotation with the arm at the side.',
      unsafeFor: ['multidirectional-shoulder-instability'],
    },
  ],
  sources: ['whiteley2007', 'convention'],
  evidence: 'expert',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope', 'a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
