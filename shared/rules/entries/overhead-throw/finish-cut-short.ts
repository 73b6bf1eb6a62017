import type { RuleEntry } from '../../ruleEntry.ts';

export const finishCutShort = {
  id: 'overhead-throw/finish-cut-short',
  kind: 'intervention',
  movement: 'overhead-throw',
  phase: 'deceleration',
  region: 'shoulder',
  all: [{ measure: 'trunk.finishFlexion', comparator: '<', threshold: 20, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'You stop your throw short: your upper body ends at {value}.',
      intervention:
        'Let your body and back leg come over your front leg. Then turn your arm out against a band and let it back slowly.',
    },
    practitioner: {
      finding: 'The follow-through is cut short: the trunk finishes at {value}.',
      intervention:
        'Let trunk and back leg finish over the front leg, then slow-lowering external rotation with a band.',
    },
    clinician: {
      finding: 'Truncated follow-through: trunk flexion at finish {value} (criterion below {threshold}).',
      intervention: 'Follow-through over the lead leg; eccentric external-rotation loading with a band.',
    },
  },
  drill: 'follow-through-and-band',
  retest: { measure: 'trunk.finishFlexion', afterDays: 28 },
  loads: ['throwing-overhead', 'trunk', 'practice'],
  effects: [
    {
      condition: 'posterior-shoulder-instability',
      effect: 'replace',
      change: 'No fast finish across the body and no catching drills. Slow external rotation with the arm at the side.',
      plain:
        'No fast finish across your body and no catching exercises. Turn your arm out slowly with the elbow at your side.',
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
