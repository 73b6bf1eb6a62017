import type { RuleEntry } from '../../ruleEntry.ts';

export const contactQuick = {
  id: 'handball-jump-throw/contact-quick',
  kind: 'confirmation',
  movement: 'handball-jump-throw',
  phase: 'take-off',
  region: 'whole-body',
  all: [{ measure: 'takeoff.contactTime', comparator: '<=', threshold: 350, unit: 'ms' }],
  wording: {
    athlete: { finding: 'You leave the floor quickly: {value}. Keep it that way.', intervention: '' },
    practitioner: { finding: 'The take-off is quick: {value}. No change needed.', intervention: '' },
    clinician: {
      finding: 'Take-off contact time within the convention: {value}. No intervention indicated.',
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
