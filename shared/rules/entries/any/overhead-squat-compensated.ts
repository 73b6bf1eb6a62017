import type { RuleEntry } from '../../ruleEntry.ts';

export const overheadSquatCompensated = {
  id: 'any/overhead-squat-compensated',
  kind: 'monitor',
  movement: 'any',
  phase: 'session',
  region: 'whole-body',
  all: [{ measure: 'squat.overheadGrade', comparator: 'is', threshold: 'met-with-compensation', unit: null }],
  wording: {
    athlete: {
      finding: 'The squat with your arms up worked, but not quite as it should.',
      intervention: 'Have your ankles and shoulders looked at before you train anything. Do it again on another day.',
    },
    practitioner: {
      finding: 'The squat with arms overhead was met with compensation.',
      intervention:
        'Write down which compensation it was, look at ankle and shoulder ranges before training anything, and repeat on another day.',
    },
    clinician: {
      finding: 'Overhead squat: met with compensation.',
      intervention: 'Record the compensation; assess ankle and shoulder range before training; repeat on another day.',
    },
  },
  drill: null,
  retest: { measure: 'squat.overheadGrade', afterDays: 14 },
  loads: ['practice'],
  effects: [
    { condition: 'posterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'rotator-cuff', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'superior-labrum', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'acromioclavicular-joint', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'elbow-ulnar-collateral-ligament', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'low-back-pain', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'anterior-cruciate-ligament', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'patellar-tendinopathy', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'ankle-sprain', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'hamstring', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'groin', effect: 'keep', change: '', unsafeFor: [] },
    {
      condition: 'anterior-shoulder-instability',
      effect: 'modify',
      change: 'Repeat without the arms overhead.',
      unsafeFor: [],
    },
    {
      condition: 'multidirectional-shoulder-instability',
      effect: 'modify',
      change: 'Repeat without the arms overhead.',
      unsafeFor: [],
    },
    { condition: 'bone-stress', effect: 'modify', change: 'Repeat only if walking is free of pain.', unsafeFor: [] },
  ],
  sources: ['bahr2016', 'dill2014', 'macrum2012', 'convention'],
  evidence: 'expert',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
