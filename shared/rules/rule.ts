import type { Source } from '../quantity.ts';
import type { Condition, Region } from '../model/injury.ts';
import type { Drill } from '../knowledge/drills/drill.ts';
import type { NamedLoadId } from '../knowledge/namedLoads.ts';
import type { Unit } from '../units.ts';

/** Order of judging. A referral hides every intervention of its region and movement. */
export const RULE_KINDS = ['referral', 'caution', 'intervention', 'monitor', 'confirmation'] as const;
export type RuleKind = (typeof RULE_KINDS)[number];

/** How strong the support is, in words that are printed. */
export const EVIDENCE = ['strong', 'moderate', 'limited', 'expert', 'convention'] as const;
export type Evidence = (typeof EVIDENCE)[number];

export type Comparator = '<' | '<=' | '>' | '>=' | 'between' | 'outside' | 'is';

/** A threshold in the measure's own unit; by reference sex where the source gives it so. `is` compares a flag or a grade. */
export type Threshold =
  | number
  | readonly [number, number]
  | { readonly female: number; readonly male: number }
  | boolean
  | string;

export interface Test {
  readonly measure: string;
  readonly comparator: Comparator;
  readonly threshold: Threshold;
  /** Unit the threshold is written in. Flags and grades have none. */
  readonly unit: Unit | null;
}

/** Strictest first: stop beats replace beats modify beats keep. */
export const EFFECTS = ['stop', 'replace', 'modify', 'keep'] as const;
export type Effect = (typeof EFFECTS)[number];

/** Who reads a finding. The practitioner's words are the ones decided on. */
export const READERS = ['athlete', 'practitioner', 'clinician'] as const;
export type Reader = (typeof READERS)[number];

/** Slots in braces: `{value}`, `{threshold}`, `{side}`. */
export interface Wording {
  readonly finding: string;
  /** What to do. Empty for a confirmation. */
  readonly intervention: string;
}

export interface InjuryEffect {
  readonly condition: Condition;
  readonly effect: Effect;
  /** Printed instead of (stop, replace) or beside (modify) the intervention. Empty for `keep`. */
  readonly change: string;
  /** The same for the athlete, where `change` needs trade words. */
  readonly plain?: string;
  /** Conditions for which the `change` text itself would be unsafe; if one is on file the effect becomes stop. */
  readonly unsafeFor: readonly Condition[];
}

/** One rule: data only. Wording and thresholds live here and nowhere else. */
export interface Rule {
  readonly id: string;
  readonly kind: RuleKind;
  /** Id of a movement in the knowledge, or `any`. */
  readonly movement: string;
  /** Id of a phase of that movement, `whole`, `profile` or `session`. */
  readonly phase: string;
  /** Region the advice loads; a referral hides interventions of its region. */
  readonly region: Region;
  readonly all: readonly Test[];
  readonly wording: Readonly<Record<Reader, Wording>>;
  /** What to practise, how much and how it gets harder. Every intervention has one. */
  readonly drill: Drill | null;
  /** What to measure again, and after how long. */
  readonly retest: { readonly measure: string; readonly afterDays: number } | null;
  readonly effects: readonly InjuryEffect[];
  /** Loads it asks to take out or lower, by their ids in the knowledge: advice that adds one of them conflicts with it. */
  readonly eases?: readonly NamedLoadId[];
  readonly sources: readonly Source[];
  readonly evidence: Evidence;
  readonly basis: 'published' | 'derived' | 'convention';
  /** Who decides in the end: printed with the finding. */
  readonly defersTo: readonly string[];
  readonly since: string;
  /** Own rules only: the shipped rule it stands in place of. */
  readonly replaces?: string | null;
  readonly supersededBy: string | null;
}
