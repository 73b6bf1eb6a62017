import type { RuleEntry } from '../../ruleEntry.ts';

export const trunkBehindRelease = {
  id: 'handball-jump-throw/trunk-behind-release',
  kind: 'intervention',
  movement: 'handball-jump-throw',
  phase: 'release',
  region: 'whole-body',
  all: [{ measure: 'trunk.lean', comparator: '<', threshold: 0, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your upper body is still leaning back when the ball leaves: {value}.',
      intervention: 'Throw a light ball and let your upper body lead: first kneeling, then standing, then in the jump.',
    },
    practitioner: {
      finding: 'The trunk is still behind the vertical as the ball leaves: {value}.',
      intervention: 'Trunk-led throws from kneeling, then standing, then in the jump, light ball.',
    },
    clinician: {
      finding: 'Trunk behind the vertical at release: {value}.',
      intervention: 'Trunk-led throwing progression with a light ball: kneeling, standing, then airborne.',
    },
  },
  drill: 'trunk-led-throws',
  retest: { measure: 'trunk.lean', afterDays: 28 },
  loads: ['throwing-overhead', 'jumping', 'trunk', 'effort'],
  effects: [
    {
      condition: 'low-back-pain',
      effect: 'modify',
      change:
        'No arching back with the arm loaded and nothing that hurts in extension; shorten the range. Change in bladder, bowel, saddle feeling or leg strength is an emergency.',
      plain:
        'No arching back with weight on your arm and nothing that hurts when you arch. Move less far. A change when you pee or poo, numbness between your legs or weak legs is an emergency.',
      unsafeFor: [],
    },
  ],
  sources: ['wagner2010', 'serrien2015', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope', 'a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
