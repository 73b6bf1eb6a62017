import type { RuleEntry } from '../../ruleEntry.ts';

export const quickPlant = {
  id: 'sprint-cut/quick-plant',
  kind: 'confirmation',
  movement: 'sprint-cut',
  phase: 'push-off',
  region: 'knee',
  all: [{ measure: 'takeoff.contactTime', comparator: '<=', threshold: 350, unit: 'ms' }],
  wording: {
    athlete: { finding: 'The foot you turn on leaves the floor quickly: {value}. Keep it that way.', intervention: '' },
    practitioner: { finding: 'The planting foot leaves quickly: {value}. No change needed.', intervention: '' },
    clinician: {
      finding: 'Plant contact time within the convention: {value}. No intervention indicated.',
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
