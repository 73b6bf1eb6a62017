import type { RuleEntry } from '../../ruleEntry.ts';

export const trunkOverFeet = {
  id: 'drop-landing/trunk-over-feet',
  kind: 'confirmation',
  movement: 'drop-landing',
  phase: 'stabilisation',
  region: 'whole-body',
  all: [{ measure: 'trunk.lean', comparator: 'between', threshold: [-10, 45], unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your upper body ends over your feet: {value} from straight up. Keep it that way.',
      intervention: '',
    },
    practitioner: {
      finding: 'The trunk comes to rest over the feet: {value} from the vertical. No change needed.',
      intervention: '',
    },
    clinician: {
      finding: 'Trunk inclination at rest within {threshold}: {value}. No intervention indicated.',
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
