import type { Fact } from './assessment.ts';

/** What two facts share that are one measure on two days. Heights are compared only with heights of one method and arms. */
export function alikeKey({ measure, side, movement, phase, height, from }: Fact): string {
  return JSON.stringify([measure, side, movement, phase, height, from.kind]);
}

/** Why one measure of two days cannot be set beside itself; null: it was taken in the same way, by the same person. */
export function takenOtherwise(before: Fact, after: Fact): string | null {
  if (before.provenance !== after.provenance) return 'the two were taken in different ways or by different people';
  if (before.takenAs !== after.takenAs)
    return 'the test was defined otherwise, or taken with another device, in another position or other shoes';
  return null;
}
