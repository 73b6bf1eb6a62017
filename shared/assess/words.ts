import type { Drill } from '../knowledge/drills/drill.ts';
import type { Evidence } from '../rules/rule.ts';
import type { Finding, Outcome } from './assessment.ts';

/** Outcomes as people read them: on screen, on the page, on the command line. */
export const OUTCOME_WORDS = {
  referral: 'Referral',
  caution: 'Caution',
  intervention: 'Intervention',
  modified: 'Modified',
  replaced: 'Replaced',
  stopped: 'Stopped',
  monitor: 'Monitor',
  borderline: 'Borderline, re-test',
  confirmed: 'Confirmed',
  'not-assessed': 'Not assessed',
} as const satisfies Record<Outcome, string>;

/** What each evidence word stands for. */
export const EVIDENCE_WORDS = {
  strong: 'strong: guideline or consensus backed by systematic reviews',
  moderate: 'moderate: prospective study, trial or repeated reliability work',
  limited: 'limited: cross-sectional, laboratory, small or conflicting studies',
  expert: 'expert: clinical commentary or expert opinion',
  convention: 'convention: coaching convention with no published cut-off',
} as const satisfies Record<Evidence, string>;

/** Where the threshold comes from. */
export const BASIS_WORDS = {
  published: 'threshold published in the source named',
  derived: 'threshold derived here from figures in the source named',
  convention: 'convention, no published source',
} as const satisfies Record<Finding['basis'], string>;

/** How much of a drill, and whose figure that is: `Quiet landings, 3 sets of 5, twice a week (dose: convention)`. */
export function doseWords({ label, dose, source }: Drill): string {
  return `${label}, ${dose} (dose: ${source.status === 'convention' ? 'convention, no published source' : source.cite})`;
}
