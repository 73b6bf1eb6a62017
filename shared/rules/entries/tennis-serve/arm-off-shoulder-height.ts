import type { RuleEntry } from '../../ruleEntry.ts';

export const armOffShoulderHeight = {
  id: 'tennis-serve/arm-off-shoulder-height',
  kind: 'intervention',
  movement: 'tennis-serve',
  phase: 'cocking',
  region: 'shoulder',
  all: [{ measure: 'arm.elevation', comparator: 'outside', threshold: [75, 125], unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your upper arm is too high or too low as the racket drops: {value}.',
      intervention: 'Practise the racket path slowly without a ball. Let your body turn first.',
    },
    practitioner: {
      finding: 'The upper arm is well off shoulder height as the racket drops: {value}.',
      intervention: 'Racket path slowly without a ball, led by the trunk.',
    },
    clinician: {
      finding: 'Humeral elevation in cocking outside {threshold}: {value}.',
      intervention: 'Low-speed racket-path practice without a ball, trunk rotation initiating.',
    },
  },
  drill: 'slow-arm-path',
  retest: { measure: 'arm.elevation', afterDays: 28 },
  loads: ['throwing-overhead', 'trunk', 'practice'],
  effects: [],
  sources: ['kovacs2011', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope', 'a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
