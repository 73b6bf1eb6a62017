import type { RuleEntry } from '../../ruleEntry.ts';

export const trialsScatter = {
  id: 'countermovement-jump/trials-scatter',
  kind: 'monitor',
  movement: 'countermovement-jump',
  phase: 'flight',
  region: 'knee',
  all: [{ measure: 'cmj.trialSpread', comparator: '>', threshold: 6, unit: '%' }],
  wording: {
    athlete: {
      finding: 'Your jumps differ from each other by {value}. That is too much to see a small change.',
      intervention: 'Do the test again after some practice jumps. At least three jumps count.',
    },
    practitioner: {
      finding: 'The trials scatter by {value}: too much to read a small change.',
      intervention: 'Repeat the test after practice trials and use the mean of at least three.',
    },
    clinician: {
      finding: 'Between-trial variation {value}: insufficient precision for a small change.',
      intervention: 'Repeat after familiarisation; use the mean of at least three trials.',
    },
  },
  drill: null,
  retest: { measure: 'cmj.trialSpread', afterDays: 7 },
  loads: ['practice'],
  effects: [
    {
      condition: 'bone-stress',
      effect: 'stop',
      change:
        'No impact. Off-feet conditioning only until the bone is not tender, walking is free of pain and the treating clinician agrees.',
      unsafeFor: [],
    },
    {
      condition: 'anterior-cruciate-ligament',
      effect: 'modify',
      change: 'No repeat without the agreement of the surgical team.',
      unsafeFor: [],
    },
    {
      condition: 'patellar-tendinopathy',
      effect: 'replace',
      change: 'No repeat until the tendon has settled.',
      plain: 'Not again until your knee has settled.',
      unsafeFor: [],
    },
    { condition: 'ankle-sprain', effect: 'modify', change: 'No repeat while landing hurts.', unsafeFor: [] },
    { condition: 'hamstring', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'groin', effect: 'keep', change: '', unsafeFor: [] },
  ],
  sources: ['souza2020', 'convention'],
  evidence: 'limited',
  basis: 'derived',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
