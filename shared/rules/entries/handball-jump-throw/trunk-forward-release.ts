import type { RuleEntry } from '../../ruleEntry.ts';

export const trunkForwardRelease = {
  id: 'handball-jump-throw/trunk-forward-release',
  kind: 'confirmation',
  movement: 'handball-jump-throw',
  phase: 'release',
  region: 'whole-body',
  all: [{ measure: 'trunk.lean', comparator: '>=', threshold: 0, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your upper body has come forward when the ball leaves: {value}. Keep it that way.',
      intervention: '',
    },
    practitioner: { finding: 'The trunk has come forward by release: {value}. No change needed.', intervention: '' },
    clinician: {
      finding: 'Trunk at or in front of the vertical at release: {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['wagner2010', 'serrien2015', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
