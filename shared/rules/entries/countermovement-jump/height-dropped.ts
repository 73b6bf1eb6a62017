import type { RuleEntry } from '../../ruleEntry.ts';

export const heightDropped = {
  id: 'countermovement-jump/height-dropped',
  kind: 'intervention',
  movement: 'countermovement-jump',
  phase: 'flight',
  region: 'whole-body',
  all: [{ measure: 'cmj.changePct', comparator: '<', threshold: -8, unit: '%' }],
  wording: {
    athlete: {
      finding: 'You jump lower than you usually do: {value}. That is more than chance.',
      intervention:
        'Take the next hard session easier. Say how you sleep and whether you are sore or ill. Jump again in two to three days.',
    },
    practitioner: {
      finding: 'Jump height has dropped, {value} against the athlete’s own baseline: more than test error.',
      intervention:
        'Lighten the next hard session, ask about sleep, soreness and illness, and jump again within 48 to 72 h.',
    },
    clinician: {
      finding: 'Jump height {value} against own baseline, beyond test error.',
      intervention:
        'Reduce the next high-intensity session; enquire about sleep, soreness and illness; repeat the jump test within 48 to 72 h.',
    },
  },
  drill: 'lighter-session',
  retest: { measure: 'cmj.changePct', afterDays: 3 },
  loads: ['practice'],
  effects: [
    { condition: 'anterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'posterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'multidirectional-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'rotator-cuff', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'superior-labrum', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'acromioclavicular-joint', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'elbow-ulnar-collateral-ligament', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'low-back-pain', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'hamstring', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'groin', effect: 'keep', change: '', unsafeFor: [] },
    {
      condition: 'bone-stress',
      effect: 'stop',
      change:
        'No impact. Off-feet conditioning only until the bone is not tender, walking is free of pain and the treating clinician agrees.',
      unsafeFor: [],
    },
    {
      condition: 'patellar-tendinopathy',
      effect: 'replace',
      change: 'Lighten the next session and leave out jumping; no jump test until the tendon has settled.',
      plain: 'Take the next session easier and leave out jumping. No jump test until your knee has settled.',
      unsafeFor: [],
    },
    {
      condition: 'anterior-cruciate-ligament',
      effect: 'modify',
      change: 'No jump test again without the agreement of the surgical team.',
      unsafeFor: [],
    },
    { condition: 'ankle-sprain', effect: 'modify', change: 'No jump test again while landing hurts.', unsafeFor: [] },
    {
      condition: 'postpartum',
      effect: 'replace',
      change: 'Lighten the next session; no jump test before a pelvic-health check.',
      unsafeFor: [],
    },
    {
      condition: 'pregnancy',
      effect: 'replace',
      change: 'Lighten the next session; no maximal jump test.',
      plain: 'Take the next session easier, and no full jump test.',
      unsafeFor: [],
    },
  ],
  eases: ['impact'],
  sources: ['souza2020', 'attia2017'],
  evidence: 'limited',
  basis: 'derived',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
