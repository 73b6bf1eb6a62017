import type { Source } from '../../quantity.ts';

/** Something to practise: how much of it, when it gets harder, and where the dose is from. Words a person of twelve reads. */
export interface Drill {
  readonly label: string;
  /** `3 sets of 6, twice a week`. */
  readonly dose: string;
  /** What makes it harder, and when. */
  readonly progression: string;
  readonly source: Source;
}
