import type { RuleEntry } from '../../ruleEntry.ts';

export const contactHeightUsual = {
  id: 'tennis-serve/contact-height-usual',
  kind: 'confirmation',
  movement: 'tennis-serve',
  phase: 'contact',
  region: 'shoulder',
  all: [{ measure: 'arm.abductionAtContact', comparator: 'between', threshold: [90, 125], unit: 'deg' }],
  wording: {
    athlete: { finding: 'Your arm height at the hit is usual: {value}. Keep it there.', intervention: '' },
    practitioner: {
      finding: 'Arm height at contact is in the usual range: {value}. No change needed.',
      intervention: '',
    },
    clinician: {
      finding: 'Shoulder abduction at contact within {threshold}: {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['fleisig2003', 'kovacs2011', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
