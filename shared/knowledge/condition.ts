import type { Condition, Region } from '../model/injury.ts';
import type { Source } from '../quantity.ts';
import type { Evidence } from '../rules/rule.ts';

/** What is known about a condition on file: whom to ask, what it usually limits, and which loads reach it. */
export interface ConditionEntry {
  readonly id: Condition;
  readonly label: string;
  /** Regions whose load reaches it. `whole-body`: every load does. Rules of these regions must state an effect. */
  readonly regions: readonly Region[];
  /** Who lifts its limits, as the end of a sentence. */
  readonly clears: string;
  /** Usual limits, in words, for people. Rules state their own effects. */
  readonly limits: string;
  /** What is usually borne well. A missing entry is not a permission. */
  readonly tolerated: string;
  /** Days after onset in which whatever it would change or replace is left out altogether. */
  readonly early?: { readonly days: number; readonly source: Source };
  /** Days after onset before which a clearance is unusual and asked about. */
  readonly usualClearance?: { readonly days: number; readonly source: Source };
  readonly evidence: Evidence;
  readonly sources: readonly Source[];
}
