import type { RuleEntry } from '../../ruleEntry.ts';

export const contactUsual = {
  id: 'volleyball-spike/contact-usual',
  kind: 'confirmation',
  movement: 'volleyball-spike',
  phase: 'contact',
  region: 'shoulder',
  all: [{ measure: 'arm.abductionAtContact', comparator: 'between', threshold: [115, 145], unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your arm is about as high at the hit as in healthy college players: {value}. Keep it there.',
      intervention: '',
    },
    practitioner: {
      finding: 'Arm height at contact is close to that of healthy college players: {value}. No change needed.',
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
  sources: ['reeser2010'],
  evidence: 'limited',
  basis: 'derived',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
