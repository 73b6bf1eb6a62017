import type { RuleEntry } from '../../ruleEntry.ts';

export const trunkLeans = {
  id: 'basketball-jump-shot/trunk-leans',
  kind: 'intervention',
  movement: 'basketball-jump-shot',
  phase: 'stability',
  region: 'whole-body',
  all: [{ measure: 'trunk.lean', comparator: 'outside', threshold: [-10, 10], unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your upper body leans while you set the ball: {value} from straight up.',
      intervention: 'Practise your balance first. Then use your usual footwork and jump straight up, without a ball.',
    },
    practitioner: {
      finding: 'The trunk leans away from the vertical while the ball is set: {value}.',
      intervention: 'Balance, then straight-up take-offs with the shooter’s footwork, without a ball.',
    },
    clinician: {
      finding: 'Trunk inclination while the ball is set outside {threshold}: {value}.',
      intervention: 'Balance training, then vertical take-offs from the player’s footwork without a ball.',
    },
  },
  drill: 'straight-up-take-offs',
  retest: { measure: 'trunk.lean', afterDays: 28 },
  loads: ['jumping', 'trunk', 'practice'],
  effects: [
    {
      condition: 'low-back-pain',
      effect: 'modify',
      change:
        'No fade-away while leaning back hurts; shorten the range instead. Change in bladder, bowel, saddle feeling or leg strength is an emergency.',
      plain:
        'No fade-away while it hurts to lean back. Shoot from nearer instead. If your bladder, bowel, the feeling between your legs or the strength of your legs changes, get emergency help.',
      unsafeFor: [],
    },
    { condition: 'anterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'posterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'multidirectional-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'rotator-cuff', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'superior-labrum', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'acromioclavicular-joint', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'elbow-ulnar-collateral-ligament', effect: 'keep', change: '', unsafeFor: [] },
  ],
  sources: ['okazaki2015', 'knudson1993', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
