import type { RuleEntry } from '../../ruleEntry.ts';

export const throwingLoadJumped = {
  id: 'any/throwing-load-jumped',
  kind: 'intervention',
  movement: 'any',
  phase: 'profile',
  region: 'shoulder',
  all: [{ measure: 'throw.weeklyRise', comparator: '>', threshold: 60, unit: '%' }],
  wording: {
    athlete: {
      finding: 'You threw {value} more this week than in your last four weeks.',
      intervention: 'Throw less: at most about a fifth more than your usual week. Build up again from there.',
    },
    practitioner: {
      finding: 'Throwing this week is {value} above the mean of the last four weeks.',
      intervention:
        'Come back to within about 20 % of the four-week mean and rebuild from there; check external rotation strength.',
    },
    clinician: {
      finding: 'Acute throwing load {value} above the four-week mean (criterion above {threshold}).',
      intervention: 'Return to within about 20 % of the four-week mean and rebuild; check external-rotation strength.',
    },
  },
  drill: 'throwing-rebuild',
  retest: { measure: 'throw.weeklyRise', afterDays: 7 },
  loads: ['practice'],
  effects: [
    {
      condition: 'anterior-shoulder-instability',
      effect: 'stop',
      change: 'No throwing unless cleared.',
      unsafeFor: [],
    },
    {
      condition: 'posterior-shoulder-instability',
      effect: 'replace',
      change: 'No throwing load until cleared; legs and cuff work as the physiotherapist says.',
      plain: 'No throwing until cleared. Train your legs and turning your arm as the physiotherapist says.',
      unsafeFor: [],
    },
    {
      condition: 'multidirectional-shoulder-instability',
      effect: 'replace',
      change:
        'Low-load control in the mid-range, shoulder blade first, in the steps of a physiotherapist. No stretching, hanging or long-lever load.',
      plain:
        'Easy control in the middle of the movement, shoulder blade first, in the steps of your physiotherapist. No stretching, no hanging and no weight far from your body.',
      unsafeFor: [],
    },
    {
      condition: 'elbow-ulnar-collateral-ligament',
      effect: 'replace',
      change:
        'No throwing or hitting. Cuff work with the arm at the side and forearm flexors; graded throwing only after clearance.',
      plain:
        'No throwing or hitting. Train turning your arm with the elbow at your side, and your grip. Throwing comes back step by step, only when you are cleared.',
      unsafeFor: ['multidirectional-shoulder-instability'],
    },
    {
      condition: 'rotator-cuff',
      effect: 'modify',
      change: 'Fewer throws than that, and none at full speed, while night pain follows.',
      unsafeFor: [],
    },
    {
      condition: 'superior-labrum',
      effect: 'modify',
      change: 'No full-speed throws in the rebuild until cleared.',
      unsafeFor: [],
    },
    { condition: 'acromioclavicular-joint', effect: 'keep', change: '', unsafeFor: [] },
  ],
  eases: ['throwing'],
  sources: ['moller2017', 'schwank2022'],
  evidence: 'moderate',
  basis: 'published',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
