import type { RuleEntry } from '../../ruleEntry.ts';

export const externalRotatorsWeak = {
  id: 'any/external-rotators-weak',
  kind: 'intervention',
  movement: 'any',
  phase: 'profile',
  region: 'shoulder',
  all: [{ measure: 'shoulder.erIrRatio', comparator: '<', threshold: 0.75, unit: '1' }],
  finding: 'External rotators are weak against internal rotators on the {side} side: ratio {value}.',
  intervention:
    'External rotation two to three times a week, 3 sets of 10: arm at the side first, then in the plane of the shoulder blade, then at 90°.',
  retest: { measure: 'shoulder.erIrRatio', afterDays: 56 },
  loads: ['shoulder-strength', 'practice'],
  effects: [],
  sources: ['cools2015', 'clarsen2014', 'andersson2018', 'asker2020'],
  evidence: 'limited',
  basis: 'published',
  defersTo: ['a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
