import type { RuleEntry } from '../../ruleEntry.ts';

export const leansWithinReason = {
  id: 'tennis-serve/leans-within-reason',
  kind: 'confirmation',
  movement: 'tennis-serve',
  phase: 'acceleration',
  region: 'whole-body',
  all: [{ measure: 'trunk.contralateralLean', comparator: '<=', threshold: 45, unit: 'deg' }],
  wording: {
    athlete: { finding: 'You lean only moderately to the side: {value}. Keep it that way.', intervention: '' },
    practitioner: {
      finding: 'The sideways lean on the way up is moderate: {value}. No change needed.',
      intervention: '',
    },
    clinician: {
      finding: 'Contralateral trunk lean within the convention: {value}. No intervention indicated.',
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
