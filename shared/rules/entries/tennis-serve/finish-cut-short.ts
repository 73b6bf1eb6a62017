import type { RuleEntry } from '../../ruleEntry.ts';

export const finishCutShort = {
  id: 'tennis-serve/finish-cut-short',
  kind: 'intervention',
  movement: 'tennis-serve',
  phase: 'deceleration',
  region: 'shoulder',
  all: [{ measure: 'trunk.finishFlexion', comparator: '<', threshold: 20, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'You stop your swing short: your upper body ends at {value}.',
      intervention:
        'Let your body and racket swing through after the hit. Then turn your arm out against a band and let it back slowly.',
    },
    practitioner: {
      finding: 'The follow-through is cut short: the trunk finishes at {value}.',
      intervention:
        'Let trunk and racket come through after contact, then slow-lowering external rotation with a band.',
    },
    clinician: {
      finding: 'Truncated follow-through: trunk flexion at finish {value} (criterion below {threshold}).',
      intervention: 'Full trunk and racket follow-through; eccentric external-rotation loading with a band.',
    },
  },
  drill: 'follow-through-and-band',
  retest: { measure: 'trunk.finishFlexion', afterDays: 28 },
  loads: ['throwing-overhead', 'trunk', 'practice'],
  effects: [
    {
      condition: 'posterior-shoulder-instability',
      effect: 'replace',
      change:
        'No kick serves and no full finish across the body. Pulling and external rotation with the arm at the side.',
      plain:
        'No kick serves and no full finish across your body. Pull, and turn your arm out, with the elbow at your side.',
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
