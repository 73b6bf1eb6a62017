import type { RuleEntry } from '../../ruleEntry.ts';

export const squeezeSevere = {
  id: 'any/squeeze-severe',
  kind: 'referral',
  movement: 'any',
  phase: 'session',
  region: 'hip-groin',
  all: [{ measure: 'pain.squeezeNrs', comparator: '>=', threshold: 6, unit: '{score}' }],
  wording: {
    athlete: {
      finding: 'Your groin hurts a lot when you squeeze: {value}.',
      intervention: 'Stop sport today and have it looked at.',
    },
    practitioner: {
      finding: 'Marked groin pain on the squeeze: {value}.',
      intervention: 'Stop sport today and arrange for it to be seen.',
    },
    clinician: {
      finding: 'Marked adductor squeeze pain: {value}.',
      intervention: 'No sport today; arrange assessment.',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [
    {
      condition: 'groin',
      effect: 'stop',
      change: 'No running, cutting or kicking until it has been assessed.',
      unsafeFor: [],
    },
  ],
  sources: ['thorborg2017'],
  evidence: 'moderate',
  basis: 'published',
  defersTo: ['a physiotherapist or athletic trainer', 'a sports or family physician'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
