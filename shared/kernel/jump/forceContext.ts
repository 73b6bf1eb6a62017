import type { Source } from '../../quantity.ts';
import type { Flight } from './findFlights.ts';
import type { ForceMarks, ForceTrace } from './forceTrace.ts';
import type { ForceIntegrals } from './integrateForce.ts';
import type { QuietWindow } from './quietWindow.ts';

/** What is known about one flight of a force record before anything is computed from it. */
export interface JumpContext {
  readonly trace: ForceTrace;
  /** Sum of the plates, N. */
  readonly forceN: Float64Array;
  /** Integrals of the force with every flight set to zero. */
  readonly integrals: ForceIntegrals;
  readonly flight: Flight;
  /** What a person placed in this jump; null where everything is found. */
  readonly marks: ForceMarks | null;
  readonly before: QuietWindow | null;
  readonly after: QuietWindow | null;
  /** The stance that the integration starts from: `before`, or `after` when integrating backward. */
  readonly rest: QuietWindow;
  readonly isBackward: boolean;
  /** The best still stance of the whole record. */
  readonly calmest: QuietWindow | null;
}

export const INTEGRATION: Source = {
  cite: 'Trapezoid rule from rest; Owen, Watkins, Kilduff, Bevan & Bennett 2014, Journal of Strength and Conditioning Research 28(6):1552-1558; Linthorne 2001, American Journal of Physics 69(11):1198-1204',
  status: 'published',
};

/** How the integral runs, in words, for the working. */
export function integrationVariant({ isBackward }: JumpContext): string {
  return isBackward ? 'backward from the still stance at the end' : 'forward from the first movement';
}

/** Why an instant that a person placed has no uncertainty. */
export const PLACED_BY_HAND = 'it was placed by hand, and how well is not known';
