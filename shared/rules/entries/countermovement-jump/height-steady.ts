import type { RuleEntry } from '../../ruleEntry.ts';

export const heightSteady = {
  id: 'countermovement-jump/height-steady',
  kind: 'confirmation',
  movement: 'countermovement-jump',
  phase: 'flight',
  region: 'whole-body',
  all: [{ measure: 'cmj.changePct', comparator: 'between', threshold: [-8, 8], unit: '%' }],
  wording: {
    athlete: { finding: 'You jump as high as you usually do: {value}. Train as planned.', intervention: '' },
    practitioner: {
      finding: 'Jump height is unchanged within test error: {value} against the own baseline. Train as planned.',
      intervention: '',
    },
    clinician: {
      finding: 'Jump height unchanged within test error: {value} against own baseline. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['souza2020', 'baumgart2017'],
  evidence: 'limited',
  basis: 'derived',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
