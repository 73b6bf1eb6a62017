import { refuseUnusable } from '../signal/refuseUnusable.ts';

/** A ball held varies in distance from the hand point by less than this: a convention. */
const HELD_WITHIN_M = 0.06;

/**
 * The last sample with a ball in the hand, from its distance to a point of the hand: the last one within 6 cm of the
 * distance at which it was held (the 20th percentile), provided it stays away afterwards. A fast ball has then been away
 * for a while already: the line through the next three distances leads back to where it left.
 *
 * @param distances m between ball and hand, evenly spaced, finite
 * @returns index, with a fraction, or null if the ball never leaves or never was there
 * @throws DomainError 'not-enough-data', 'input-out-of-range'
 * @source convention
 */
export function lastInHand(distances: readonly number[]): number | null {
  refuseUnusable('lastInHand', distances, 5);
  const held = distances.toSorted((a, b) => a - b)[Math.floor(0.2 * (distances.length - 1))] as number;
  const last = distances.findLastIndex((d) => d <= held + HELD_WITHIN_M);
  // Two samples away at least, or it may be a misread frame.
  if (last < 0 || last > distances.length - 3) return null;
  return Math.min(last, Math.max(last - MOST_BACK, left(distances, last, held)));
}

/** How far back at most the line is believed, samples: a convention. */
const MOST_BACK = 2;

function left(distances: readonly number[], last: number, held: number): number {
  const away = distances.slice(last + 1, last + 4);
  const [first = held, next] = [away[0], away.at(-1)];
  const speed = next === undefined || away.length < 2 ? 0 : (next - first) / (away.length - 1);
  return speed > 0 ? last + 1 - (first - held) / speed : last;
}
