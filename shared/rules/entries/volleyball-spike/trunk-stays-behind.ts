import type { RuleEntry } from '../../ruleEntry.ts';

export const trunkStaysBehind = {
  id: 'volleyball-spike/trunk-stays-behind',
  kind: 'intervention',
  movement: 'volleyball-spike',
  phase: 'follow-through',
  region: 'whole-body',
  all: [{ measure: 'trunk.finishFlexion', comparator: '<', threshold: 5, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your upper body stays behind after the hit: {value}.',
      intervention: 'Stand, hit softly and let your upper body come forward with your arm.',
    },
    practitioner: {
      finding: 'The trunk stays behind after the hit: {value}.',
      intervention: 'Hits from standing that let the trunk come forward with the arm, off-speed.',
    },
    clinician: {
      finding: 'Reduced trunk flexion after contact: {value} (criterion below {threshold}).',
      intervention: 'Standing submaximal hits with trunk flexion following the arm.',
    },
  },
  drill: 'standing-hits',
  retest: { measure: 'trunk.finishFlexion', afterDays: 28 },
  loads: ['throwing-overhead', 'leg-strength', 'trunk', 'practice'],
  effects: [
    {
      condition: 'low-back-pain',
      effect: 'modify',
      change:
        'No arching back with a hard hit; nothing that hurts in extension. Change in bladder, bowel, saddle feeling or leg strength is an emergency.',
      plain:
        'No arching back with a hard hit, and nothing that hurts when you arch. A change when you pee or poo, numbness between your legs or weak legs is an emergency.',
      unsafeFor: [],
    },
  ],
  sources: ['convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
