import type { RuleEntry } from '../../ruleEntry.ts';

export const squeezeModerate = {
  id: 'any/squeeze-moderate',
  kind: 'intervention',
  movement: 'any',
  phase: 'session',
  region: 'hip-groin',
  all: [{ measure: 'pain.squeezeNrs', comparator: 'between', threshold: [3, 5], unit: '{score}' }],
  wording: {
    athlete: {
      finding: 'Your groin hurts when you squeeze: {value}.',
      intervention:
        'Do less side-stepping, kicking and sprinting today. Train squeezing softly. Say how it feels before each session.',
    },
    practitioner: {
      finding: 'Moderate groin pain on the squeeze: {value}.',
      intervention:
        'Less side-stepping, kicking and sprinting today; graded adductor strength; ask again before each session.',
    },
    clinician: {
      finding: 'Moderate adductor squeeze pain: {value}.',
      intervention:
        'Reduce change of direction, kicking and sprinting today; graded adductor strengthening; repeat the squeeze before each session.',
    },
  },
  drill: 'graded-squeeze',
  retest: { measure: 'pain.squeezeNrs', afterDays: 7 },
  loads: ['leg-strength', 'practice'],
  effects: [
    { condition: 'groin', effect: 'modify', change: 'At 6 of 10 or more: stop sport and refer.', unsafeFor: [] },
  ],
  eases: ['impact'],
  sources: ['thorborg2017', 'ishoi2020'],
  evidence: 'moderate',
  basis: 'published',
  defersTo: ['a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
