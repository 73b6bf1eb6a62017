import type { OwnMovement } from '../model/ownMovement.ts';
import type { SharedRule } from '../model/ownRule.ts';
import type { Rule } from '../rules/rule.ts';

/** A set of rules that came with the program. */
export interface KeptRules {
  /** SHA-256 of the canonical JSON of the rules. */
  readonly digest: string;
  readonly version: string;
  readonly rules: readonly Rule[];
}

/** One rule for every case, made, changed or (null) taken out. */
export interface SharedEdit {
  readonly id: string;
  readonly rule: SharedRule | null;
}

export interface SharedRules {
  readonly rules: readonly SharedRule[];
  readonly canUndo: boolean;
  readonly canRedo: boolean;
}

/**
 * What a store judges its cases by: the rules of the program that each case was last judged by, and own rules for every
 * case. A case keeps its rules through an update of the program until the update is accepted.
 */
export interface RuleStore {
  /** Makes these the rules of the program: new cases are judged by them, and cases that no rules are known of. */
  use(rules: KeptRules): Promise<void>;
  /** Cases that an update waits for, in the order they were made. */
  waiting(): Promise<string[]>;
  /** Every case is judged by the rules of the program from now on. */
  accept(): Promise<void>;
  shared(): Promise<SharedRules>;
  /** Movements built in any case, oldest first. */
  movements(): Promise<OwnMovement[]>;
  /** As one step of undo; typing on in one rule is one step. */
  share(edits: readonly SharedEdit[], at: string): Promise<void>;
  /** Takes back the latest step, or does nothing if there is none. */
  undoShared(at: string): Promise<void>;
  redoShared(at: string): Promise<void>;
}
