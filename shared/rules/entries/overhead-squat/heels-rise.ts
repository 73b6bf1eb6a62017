import type { RuleEntry } from '../../ruleEntry.ts';

export const heelsRise = {
  id: 'overhead-squat/heels-rise',
  kind: 'intervention',
  movement: 'overhead-squat',
  phase: 'bottom',
  region: 'ankle',
  all: [
    { measure: 'wblt.distance', comparator: '<', threshold: 9, unit: 'cm' },
    { measure: 'squat.heelLift', comparator: 'is', threshold: true, unit: null },
  ],
  wording: {
    athlete: {
      finding: 'Your heels come up, and your {side} ankle bends little: {value}.',
      intervention:
        'Push your knee over your toes with the heel down. Put a small wedge under your heels until it gets better.',
    },
    practitioner: {
      finding: 'The heels rise, and the {side} ankle bends little under weight: {value}.',
      intervention: 'Calf and joint mobility under body weight; a small wedge under the heels meanwhile.',
    },
    clinician: {
      finding: 'Heel rise with reduced weight-bearing dorsiflexion, {side}: {value}.',
      intervention: 'Weight-bearing dorsiflexion mobility; heel wedge meanwhile.',
    },
  },
  drill: 'knee-over-toes',
  retest: { measure: 'wblt.distance', afterDays: 28 },
  loads: ['ankle-mobility', 'practice'],
  effects: [],
  sources: ['dill2014', 'macrum2012', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
