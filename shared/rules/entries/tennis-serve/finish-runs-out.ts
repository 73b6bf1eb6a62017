import type { RuleEntry } from '../../ruleEntry.ts';

export const finishRunsOut = {
  id: 'tennis-serve/finish-runs-out',
  kind: 'confirmation',
  movement: 'tennis-serve',
  phase: 'deceleration',
  region: 'shoulder',
  all: [{ measure: 'trunk.finishFlexion', comparator: '>=', threshold: 20, unit: 'deg' }],
  wording: {
    athlete: { finding: 'You let your body run out after the hit, to {value}. Keep it that way.', intervention: '' },
    practitioner: { finding: 'The trunk runs out after contact, to {value}. No change needed.', intervention: '' },
    clinician: { finding: 'Trunk flexion at finish adequate: {value}. No intervention indicated.', intervention: '' },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [
    {
      condition: 'posterior-shoulder-instability',
      effect: 'modify',
      change:
        'A full finish across the body loads the back of the shoulder: only as far as the treating clinician allows.',
      plain:
        'A full finish across your body loads the back of your shoulder. Go only as far as your doctor or physiotherapist lets you.',
      unsafeFor: [],
    },
  ],
  sources: ['kovacs2011', 'convention'],
  evidence: 'expert',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
