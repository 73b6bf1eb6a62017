import type { RuleEntry } from '../../ruleEntry.ts';

export const sideDifference = {
  id: 'countermovement-jump/side-difference',
  kind: 'monitor',
  movement: 'countermovement-jump',
  phase: 'landing',
  region: 'knee',
  all: [{ measure: 'force.asymmetry', comparator: '>', threshold: 15, unit: '%' }],
  wording: {
    athlete: {
      finding: 'One leg pushes harder than the other: by {value}.',
      intervention: 'It counts only if it shows on two days. Then train the weaker leg by itself.',
    },
    practitioner: {
      finding: 'The legs differ in force by {value}.',
      intervention:
        'Act only if it is more than the own trial variation and points the same way on two days; then single-leg strength on the low side.',
    },
    clinician: {
      finding: 'Inter-limb force asymmetry: {value} (criterion above {threshold}).',
      intervention:
        'Act only if beyond own trial variation and in one direction on two days; then unilateral strengthening of the weaker limb.',
    },
  },
  drill: null,
  retest: { measure: 'force.asymmetry', afterDays: 14 },
  loads: ['leg-strength', 'practice'],
  effects: [],
  sources: ['bishop2018', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope', 'a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
