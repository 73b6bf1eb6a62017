import type { RuleEntry } from '../../ruleEntry.ts';

export const armOffShoulderHeight = {
  id: 'handball-jump-throw/arm-off-shoulder-height',
  kind: 'intervention',
  movement: 'handball-jump-throw',
  phase: 'cocking',
  region: 'shoulder',
  all: [{ measure: 'arm.elevation', comparator: 'outside', threshold: [75, 110], unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your upper arm is too high or too low as you draw the ball back: {value}.',
      intervention: 'Practise the arm path slowly with a light ball. Stand on both feet and let your body turn first.',
    },
    practitioner: {
      finding: 'The upper arm is well off shoulder height as the ball is drawn back: {value}.',
      intervention: 'Arm path at low speed with a light ball, led by the trunk, both feet on the floor.',
    },
    clinician: {
      finding: 'Humeral elevation in cocking outside {threshold}: {value}.',
      intervention: 'Low-speed arm-path practice, double-leg stance, light ball, trunk rotation initiating.',
    },
  },
  drill: 'slow-arm-path',
  retest: { measure: 'arm.elevation', afterDays: 28 },
  loads: ['throwing-overhead', 'trunk', 'practice'],
  effects: [],
  sources: ['whiteley2007', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope', 'a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
