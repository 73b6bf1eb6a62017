import type { RuleEntry } from '../../ruleEntry.ts';

export const squeezeSevere = {
  id: 'any/squeeze-severe',
  kind: 'referral',
  movement: 'any',
  phase: 'session',
  region: 'hip-groin',
  all: [{ measure: 'pain.squeezeNrs', comparator: '>=', threshold: 6, unit: '{score}' }],
  finding: 'Marked groin pain on the squeeze: {value}.',
  intervention: 'Stop sport today and arrange for it to be seen.',
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
