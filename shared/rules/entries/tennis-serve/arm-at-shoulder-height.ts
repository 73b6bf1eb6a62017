import type { RuleEntry } from '../../ruleEntry.ts';

export const armAtShoulderHeight = {
  id: 'tennis-serve/arm-at-shoulder-height',
  kind: 'confirmation',
  movement: 'tennis-serve',
  phase: 'cocking',
  region: 'shoulder',
  all: [{ measure: 'arm.elevation', comparator: 'between', threshold: [75, 125], unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your upper arm is near shoulder height as the racket drops: {value}. Keep it there.',
      intervention: '',
    },
    practitioner: {
      finding: 'The upper arm is near shoulder height as the racket drops: {value}. No change needed.',
      intervention: '',
    },
    clinician: {
      finding: 'Humeral elevation in cocking within {threshold}: {value}. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['kovacs2011', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
