import type { RuleEntry } from '../../ruleEntry.ts';

export const fewFaults = {
  id: 'sprint-cut/few-faults',
  kind: 'confirmation',
  movement: 'sprint-cut',
  phase: 'whole',
  region: 'whole-body',
  all: [{ measure: 'cut.score', comparator: '<=', threshold: 3, unit: '{points}' }],
  wording: {
    athlete: {
      finding: 'Your cut shows few of the listed mistakes: {value} of 11. Keep it that way.',
      intervention: '',
    },
    practitioner: {
      finding: 'Cutting technique is in the low-fault band: {value} of 11. No change needed.',
      intervention: '',
    },
    clinician: {
      finding: 'Cutting score in the low-fault band: {value} of 11. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['dosSantos2019', 'dosSantos2021', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
