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
  finding: 'The heels rise, and the {side} ankle bends little under weight: {value}.',
  intervention:
    'Calf and joint mobility under body weight, 3 sets of 10 a day; a small wedge under the heels meanwhile.',
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
