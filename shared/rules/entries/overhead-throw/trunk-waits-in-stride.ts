import type { RuleEntry } from '../../ruleEntry.ts';

export const trunkWaitsInStride = {
  id: 'overhead-throw/trunk-waits-in-stride',
  kind: 'confirmation',
  movement: 'overhead-throw',
  phase: 'stride',
  region: 'whole-body',
  all: [{ measure: 'trunk.lean', comparator: '<=', threshold: 25, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your upper body waits until your front foot is down: {value} at most. Keep it that way.',
      intervention: '',
    },
    practitioner: {
      finding: 'The trunk waits for the front foot: {value} at most. No change needed.',
      intervention: '',
    },
    clinician: {
      finding: 'Trunk inclination in the stride within the convention: {value} at most. No intervention indicated.',
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
