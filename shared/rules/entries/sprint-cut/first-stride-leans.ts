import type { RuleEntry } from '../../ruleEntry.ts';

export const firstStrideLeans = {
  id: 'sprint-cut/first-stride-leans',
  kind: 'confirmation',
  movement: 'sprint-cut',
  phase: 'sprint',
  region: 'whole-body',
  all: [{ measure: 'trunk.lean', comparator: '>=', threshold: 5, unit: 'deg' }],
  wording: {
    athlete: { finding: 'You lean into your first stride: {value}. Keep it that way.', intervention: '' },
    practitioner: { finding: 'The first stride away leans into the run: {value}. No change needed.', intervention: '' },
    clinician: {
      finding: 'Forward trunk inclination in the first stride adequate: {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
