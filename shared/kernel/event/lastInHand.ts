import { refuseUnusable } from '../signal/refuseUnusable.ts';

/** A ball held varies in distance from the hand point by less than this: a convention. */
const HELD_WITHIN_M = 0.06;

/**
 * The last sample with a ball in the hand, from its distance to a point of the hand: the last one within 6 cm of the
 * distance at which it was held (the 20th percentile), provided it stays away afterwards.
 *
 * @param distances m between ball and hand, evenly spaced, finite
 * @returns index, or null if the ball never leaves or never was there
 * @throws DomainError 'not-enough-data', 'input-out-of-range'
 * @source convention
 */
export function lastInHand(distances: readonly number[]): number | null {
  refuseUnusable('lastInHand', distances, 5);
  const held = distances.toSorted((a, b) => a - b)[Math.floor(0.2 * (distances.length - 1))] as number;
  const last = distances.findLastIndex((d) => d <= held + HELD_WITHIN_M);
  // Two samples away at least, or it may be a misread frame.
  return last < 0 || last > distances.length - 3 ? null : last;
}
