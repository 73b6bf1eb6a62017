import type { RuleEntry } from '../../ruleEntry.ts';

export const trunkAheadOfStride = {
  id: 'overhead-throw/trunk-ahead-of-stride',
  kind: 'intervention',
  movement: 'overhead-throw',
  phase: 'stride',
  region: 'whole-body',
  all: [{ measure: 'trunk.lean', comparator: '>', threshold: 25, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your upper body falls forward before your front foot is down: {value}.',
      intervention:
        'Step with your hips first and your upper body back, without a ball. Later use a light ball at half speed.',
    },
    practitioner: {
      finding: 'The trunk falls forward before the front foot is down: {value}.',
      intervention:
        'Stride with the hips leading and the trunk back, without a ball, then with a light one at half speed.',
    },
    clinician: {
      finding: 'Premature forward trunk inclination in the stride: {value} (criterion above {threshold}).',
      intervention: 'Stride with pelvic lead and trunk delay, without a ball, then a light ball at half speed.',
    },
  },
  drill: 'hips-lead-stride',
  retest: { measure: 'trunk.lean', afterDays: 28 },
  loads: ['throwing-overhead', 'leg-strength', 'trunk', 'practice'],
  effects: [],
  sources: ['convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope', 'a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
