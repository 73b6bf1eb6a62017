import type { RuleEntry } from '../../ruleEntry.ts';

export const singleLegSquatCompensated = {
  id: 'any/single-leg-squat-compensated',
  kind: 'monitor',
  movement: 'any',
  phase: 'session',
  region: 'knee',
  all: [{ measure: 'squat.singleLegGrade', comparator: 'is', threshold: 'met-with-compensation', unit: null }],
  wording: {
    athlete: {
      finding: 'The squat on your {side} leg worked, but not quite as it should.',
      intervention: 'Have your ankle and hip looked at before you train anything. Do it again on another day.',
    },
    practitioner: {
      finding: 'The single-leg squat on the {side} leg was met with compensation.',
      intervention: 'Look at ankle bend and hip control before training anything; repeat on another day.',
    },
    clinician: {
      finding: 'Single-leg squat, {side}: met with compensation.',
      intervention: 'Assess ankle dorsiflexion and hip control before training; repeat on another day.',
    },
  },
  drill: null,
  retest: { measure: 'squat.singleLegGrade', afterDays: 14 },
  loads: ['practice'],
  effects: [
    { condition: 'anterior-cruciate-ligament', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'patellar-tendinopathy', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'ankle-sprain', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'hamstring', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'groin', effect: 'keep', change: '', unsafeFor: [] },
    {
      condition: 'bone-stress',
      effect: 'stop',
      change:
        'No impact. Off-feet conditioning only until the bone is not tender, walking is free of pain and the treating clinician agrees.',
      unsafeFor: [],
    },
  ],
  sources: ['bahr2016', 'dill2014', 'convention'],
  evidence: 'expert',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
