import type { RuleEntry } from '../../ruleEntry.ts';

export const elbowOpened = {
  id: 'overhead-throw/elbow-opened',
  kind: 'confirmation',
  movement: 'overhead-throw',
  phase: 'acceleration',
  region: 'shoulder',
  all: [{ measure: 'elbow.flexAtRelease', comparator: '<=', threshold: 50, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your elbow has opened by the time the ball leaves: {value}. Keep it that way.',
      intervention: '',
    },
    practitioner: { finding: 'The elbow has opened by release: {value}. No change needed.', intervention: '' },
    clinician: {
      finding: 'Elbow extension at release adequate: {value} of flexion. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['vanDenTillaar2007', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
