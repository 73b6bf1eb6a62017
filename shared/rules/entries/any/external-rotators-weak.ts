import type { RuleEntry } from '../../ruleEntry.ts';

export const externalRotatorsWeak = {
  id: 'any/external-rotators-weak',
  kind: 'intervention',
  movement: 'any',
  phase: 'profile',
  region: 'shoulder',
  all: [{ measure: 'shoulder.erIrRatio', comparator: '<', threshold: 0.75, unit: '1' }],
  wording: {
    athlete: {
      finding: 'The muscles that turn your {side} arm out are weak next to those that turn it in: {value}.',
      intervention: 'Turn your arm out against a band: first with the elbow at your side, later with the arm raised.',
    },
    practitioner: {
      finding: 'External rotators are weak against internal rotators on the {side} side: ratio {value}.',
      intervention: 'External rotation: arm at the side first, then in the plane of the shoulder blade, then at 90°.',
    },
    clinician: {
      finding: 'Low external-to-internal rotation strength ratio, {side}: {value} (criterion below {threshold}).',
      intervention: 'External-rotation strengthening: arm at the side, then scapular plane, then 90° of abduction.',
    },
  },
  drill: 'turn-out-with-band',
  retest: { measure: 'shoulder.erIrRatio', afterDays: 56 },
  loads: ['shoulder-strength', 'practice'],
  effects: [],
  sources: ['cools2015', 'clarsen2014', 'andersson2018', 'asker2020'],
  evidence: 'limited',
  basis: 'published',
  defersTo: ['a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
