import type { Source } from '../quantity.ts';

/** A skill as data: its phases in order, the events that bound them, and what to measure where. */
export interface Movement {
  /** kebab-case, `handball-jump-throw`. */
  readonly id: string;
  readonly label: string;
  readonly sport: string;
  /** Instants in time order. Phases start and end at these. */
  readonly events: readonly { readonly id: string; readonly label: string; readonly means: string }[];
  readonly phases: readonly {
    readonly id: string;
    readonly label: string;
    readonly startsAt: string;
    readonly endsAt: string;
    /** One sentence a newcomer understands. */
    readonly means: string;
  }[];
  /** Measure ids taken in each phase (of phase ids above, or `whole`). */
  readonly checkpoints: readonly { readonly phase: string; readonly measure: string }[];
  /** Event pairs that may coincide or overlap, in words for the person; order is otherwise strict. */
  readonly mayOverlap: readonly (readonly [string, string])[];
  /** The aim at a target decides what a release angle is judged against. */
  readonly aimsAtTarget: boolean;
  readonly isAirborneSkill: boolean;
  readonly source: Source;
}
