import type { RuleEntry } from '../../ruleEntry.ts';

export const armOffShoulderHeight = {
  id: 'overhead-throw/arm-off-shoulder-height',
  kind: 'intervention',
  movement: 'overhead-throw',
  phase: 'late-cocking',
  region: 'shoulder',
  all: [{ measure: 'arm.elevation', comparator: 'outside', threshold: [75, 110], unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your upper arm is too high or too low just before you throw: {value}.',
      intervention: 'Practise the arm path slowly with a light ball. Let your body turn first.',
    },
    practitioner: {
      finding: 'The upper arm is well above or below shoulder height in late cocking: {value}.',
      intervention: 'Arm path at low speed, led by the trunk, light ball.',
    },
    clinician: {
      finding: 'Humeral elevation in late cocking outside {threshold}: {value}.',
      intervention: 'Low-speed arm-path practice, light ball, trunk rotation initiating.',
    },
  },
  drill: 'slow-arm-path',
  retest: { measure: 'arm.elevation', afterDays: 28 },
  loads: ['throwing-overhead', 'trunk', 'practice'],
  effects: [],
  sources: ['whiteley2007', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope', 'a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
