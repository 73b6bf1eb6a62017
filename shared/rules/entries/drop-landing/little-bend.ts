import type { RuleEntry } from '../../ruleEntry.ts';

export const littleBend = {
  id: 'drop-landing/little-bend',
  kind: 'intervention',
  movement: 'drop-landing',
  phase: 'absorption',
  region: 'knee',
  all: [{ measure: 'landing.kneeFlexPeak', comparator: '<', threshold: 45, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'You bend little after you land: your {side} knee reaches {value}.',
      intervention: 'Land quietly on both feet from a low box and sink deeper at the end.',
    },
    practitioner: {
      finding: 'Little bend after contact: the {side} knee reaches {value}.',
      intervention: 'Quiet two-foot landings from a low box with a deeper finish.',
    },
    clinician: {
      finding: 'Reduced peak knee flexion after contact, {side}: {value} (criterion below {threshold}).',
      intervention: 'Bilateral low-box landings with greater hip and knee flexion at finish.',
    },
  },
  drill: 'quiet-landings',
  retest: { measure: 'landing.kneeFlexPeak', afterDays: 28 },
  loads: ['jumping', 'effort'],
  effects: [],
  sources: ['padua2009', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
