import type { RuleEntry } from '../../ruleEntry.ts';

export const squeezeQuiet = {
  id: 'any/squeeze-quiet',
  kind: 'confirmation',
  movement: 'any',
  phase: 'session',
  region: 'hip-groin',
  all: [{ measure: 'pain.squeezeNrs', comparator: '<=', threshold: 2, unit: '{score}' }],
  wording: {
    athlete: {
      finding: 'Your groin hardly hurts or does not hurt when you squeeze: {value}. Nothing to change today.',
      intervention: '',
    },
    practitioner: {
      finding: 'Little or no groin pain on the squeeze: {value}. No change for the groin needed today.',
      intervention: '',
    },
    clinician: {
      finding: 'Adductor squeeze pain {value}. No intervention indicated for the groin today.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['thorborg2017'],
  evidence: 'moderate',
  basis: 'published',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
