import type { RuleEntry } from '../../ruleEntry.ts';

export const putShort = {
  id: 'any/put-short',
  kind: 'intervention',
  movement: 'any',
  phase: 'profile',
  region: 'shoulder',
  all: [{ measure: 'shotput.lsi', comparator: '<', threshold: 0.92, unit: '1' }],
  wording: {
    athlete: {
      finding: 'Your stronger arm pushes the ball less far than expected: ratio {value}.',
      intervention: 'Say first if anything hurts or was hurt before. Then train pushing with one arm, step by step.',
    },
    practitioner: {
      finding: 'The dominant arm puts less far than expected: ratio {value}.',
      intervention: 'Ask about pain and history first; then one-arm push strength in steps.',
    },
    clinician: {
      finding: 'Reduced seated one-arm put ratio, dominant to other: {value} (criterion below {threshold}).',
      intervention: 'Enquire about pain and history first; then graded unilateral push strengthening.',
    },
  },
  drill: 'one-arm-push',
  retest: { measure: 'shotput.lsi', afterDays: 42 },
  loads: ['arm-support', 'shoulder-strength', 'practice'],
  effects: [],
  sources: ['chmielewski2014', 'degot2021'],
  evidence: 'limited',
  basis: 'derived',
  defersTo: ['a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
