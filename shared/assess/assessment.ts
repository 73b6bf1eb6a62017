import type { Reading, Source } from '../quantity.ts';
import type { Kind } from '../model/records.ts';
import type { Condition } from '../model/injury.ts';
import type { SideOrNone } from '../model/parts.ts';
import type { Drill } from '../knowledge/drills/drill.ts';
import type { Effect, Evidence, Reader, RuleKind, Threshold, Comparator } from '../rules/rule.ts';
import type { Unit } from '../units.ts';

/** One thing known (or not) about this athlete: computed from what was recorded, or entered. Rules read only these. */
export interface Fact {
  /** Stable within the case: measure, record, phase and side joined by `/`. */
  readonly key: string;
  /** Id in the measure list of the knowledge. */
  readonly measure: string;
  /** Label, filled from the knowledge: `Jump height, flight time`. */
  readonly label: string;
  readonly movement: string | null;
  readonly phase: string | null;
  readonly side: SideOrNone;
  /** Number with unit and u, a yes/no, a grade in words, or unknown with the reason. */
  readonly value: FactValue;
  /** Unit to show numbers in. */
  readonly displayUnit: Unit | null;
  /** Heights only: they may be compared only if all three agree. */
  readonly height: {
    readonly reference: 'take-off' | 'standing';
    readonly method: string;
    readonly arms: string;
  } | null;
  readonly takenOn: string | null;
  /** The record it comes from. */
  readonly from: { readonly kind: Kind; readonly id: string };
  /** How it was obtained, in words. */
  readonly provenance: string;
  /**
   * What a second result must share beside that to be compared with it: the test as it was defined, device, position,
   * shoes. Null: nothing.
   */
  readonly takenAs: string | null;
}

export type FactValue =
  | { readonly kind: 'number'; readonly reading: Reading }
  | { readonly kind: 'flag'; readonly flag: boolean }
  | { readonly kind: 'grade'; readonly grade: string }
  | { readonly kind: 'unknown'; readonly reason: string };

export const OUTCOMES = [
  'referral',
  'caution',
  'intervention',
  'modified',
  'replaced',
  'stopped',
  'monitor',
  'borderline',
  'confirmed',
  'not-assessed',
] as const;
export type Outcome = (typeof OUTCOMES)[number];

/** What one injury on file did to one finding. */
export interface HistoryEffect {
  readonly injuryId: string;
  readonly condition: Condition;
  readonly effect: Effect;
  readonly change: string;
  /** The same for the athlete. */
  readonly plain: string;
  /** Who must lift the limit, in words. */
  readonly clears: string;
}

export interface TestResult {
  readonly measure: string;
  readonly label: string;
  readonly factKey: string | null;
  readonly comparator: Comparator;
  readonly threshold: Threshold;
  readonly unit: Unit | null;
  readonly result: 'met' | 'not-met' | 'undetermined';
  /** Inside its measurement error of the threshold. */
  readonly isBorderline: boolean;
  /** Chance that the true value is past the threshold, 0 to 1; null where there is no u. */
  readonly chance: number | null;
  /** Plain words: `8.2 ° against a limit of 10 °`. */
  readonly words: string;
}

/** One finding for one reader. */
export interface FindingWords {
  readonly finding: string;
  readonly intervention: string | null;
  readonly adjustments: readonly string[];
}

export interface Finding {
  /** Stable: rule, trial or session, phase and side joined by `/`. Decisions refer to it. */
  readonly key: string;
  readonly ruleId: string;
  readonly kind: RuleKind;
  readonly outcome: Outcome;
  readonly movement: string;
  readonly phase: string;
  readonly side: SideOrNone;
  readonly trialId: string | null;
  readonly takenOn: string | null;
  /** What was found, in the practitioner's words, like the next two: decisions are made on these. */
  readonly finding: string;
  /** What may be suggested, after the injuries had their say; null: nothing may. */
  readonly intervention: string | null;
  /** Beside the intervention (modify). */
  readonly adjustments: readonly string[];
  /** The same three for each reader. */
  readonly wording: Readonly<Record<Reader, FindingWords>>;
  /** Dose and progression of what may be suggested; null where an injury put something else in its place. */
  readonly drill: Drill | null;
  /** What was held back and why; null: nothing was. Its text never reaches a page as advice. */
  readonly withheld: {
    readonly text: string;
    readonly because: readonly HistoryEffect[];
    /** The finding of the referral that comes first, where that is the reason. */
    readonly referral?: string;
  } | null;
  readonly effects: readonly HistoryEffect[];
  readonly tests: readonly TestResult[];
  /** For `not-assessed`: what would be needed. */
  readonly needed: string | null;
  readonly sources: readonly Source[];
  readonly evidence: Evidence;
  readonly basis: 'published' | 'derived' | 'convention';
  readonly defersTo: readonly string[];
  readonly retest: { readonly measure: string; readonly label: string; readonly afterDays: number } | null;
  /** Each step of the judgment in plain words, in order. */
  readonly trace: readonly string[];
}

/** One of the case checks: does the working hold together? */
export interface CaseCheck {
  readonly id: string;
  readonly verdict: 'fine' | 'questioned' | 'cannot tell';
  /** The sentence a tutor would write. */
  readonly sentence: string;
  /** The numbers that disagree, as read; empty where it cannot tell. */
  readonly numbers: readonly { readonly label: string; readonly value: number; readonly unit: Unit }[];
  /** Fact or record the check questions, for the margin. */
  readonly about: string | null;
  readonly source: Source | null;
}

export const SECTIONS = ['athlete', 'injuries', 'screening', 'jumps', 'trials', 'findings', 'report'] as const;
export type SectionId = (typeof SECTIONS)[number];

export interface SectionState {
  readonly section: SectionId;
  /** `3 of 8 entered`, `needs body mass`, `2 to decide`. */
  readonly words: string;
  readonly isRequired: boolean;
  readonly isComplete: boolean;
}

/** Everything that follows from a case file. Pure: the same file always gives the same assessment. */
export interface Assessment {
  readonly facts: readonly Fact[];
  readonly findings: readonly Finding[];
  readonly checks: readonly CaseCheck[];
  readonly sections: readonly SectionState[];
  /** `Stop and be seen` notices: pain, a positive clearing test, a red flag. */
  readonly stops: readonly { readonly words: string; readonly about: string }[];
  /** What is still needed for the case's purpose, in words. */
  readonly missing: readonly string[];
  readonly kernelVersion: string;
  readonly rulesVersion: string;
}
