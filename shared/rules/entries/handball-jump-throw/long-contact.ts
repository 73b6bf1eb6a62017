import type { RuleEntry } from '../../ruleEntry.ts';

export const longContact = {
  id: 'handball-jump-throw/long-contact',
  kind: 'intervention',
  movement: 'handball-jump-throw',
  phase: 'take-off',
  region: 'whole-body',
  all: [{ measure: 'takeoff.contactTime', comparator: '>', threshold: 350, unit: 'ms' }],
  wording: {
    athlete: {
      finding: 'Your jumping foot stays on the floor for a long time: {value}.',
      intervention:
        'Practise quick jumps off one foot over a low line from two steps. Do only a few, and stop when you get tired.',
    },
    practitioner: {
      finding: 'The take-off foot stays long on the floor: {value}.',
      intervention: 'Quick single-leg take-offs from two steps over a low line, few and fresh.',
    },
    clinician: {
      finding: 'Prolonged take-off contact: {value} (criterion above {threshold}).',
      intervention: 'Short-contact single-leg take-offs from a two-step approach, low volume, unfatigued.',
    },
  },
  drill: 'quick-take-offs',
  retest: { measure: 'takeoff.contactTime', afterDays: 28 },
  loads: ['jumping', 'effort'],
  effects: [
    { condition: 'anterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'posterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'multidirectional-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'rotator-cuff', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'superior-labrum', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'acromioclavicular-joint', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'elbow-ulnar-collateral-ligament', effect: 'keep', change: '', unsafeFor: [] },
    {
      condition: 'low-back-pain',
      effect: 'modify',
      change:
        'Few contacts, on a soft floor, and none while impact hurts. Change in bladder, bowel, saddle feeling or leg strength is an emergency.',
      unsafeFor: [],
    },
    {
      condition: 'anterior-cruciate-ligament',
      effect: 'replace',
      change: 'Planned two-leg take-offs, low and slow; single-leg take-offs only when the surgical team agrees.',
      plain:
        'Take off from both legs, low and slow, as planned before. Take off from one leg only when your surgeon agrees.',
      unsafeFor: [
        'patellar-tendinopathy',
        'ankle-sprain',
        'hamstring',
        'groin',
        'bone-stress',
        'pregnancy',
        'postpartum',
      ],
    },
  ],
  sources: ['convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
