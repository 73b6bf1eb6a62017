import { refuseUnusable } from '../signal/refuseUnusable.ts';

/** A foot this far above its lowest stands on the floor: a convention, above digitising noise and below any step. */
export const CONTACT_HEIGHT_M = 0.03;
/** Shorter stretches off the floor are steps or noise: a convention. */
const SHORTEST_FLIGHT_S = 0.15;

export interface AirborneSpan {
  /** Last sample in contact before, and first in contact after; null where the record starts or ends in the air. */
  readonly takeoff: number | null;
  readonly landing: number | null;
}

/**
 * When a body leaves the floor and comes back, from the height of its lowest foot: the longest stretch with that foot
 * more than 3 cm above its own low level (its 5th percentile).
 *
 * @param lowestFoot m, evenly spaced, finite
 * @param rateHz samples a second
 * @returns null where nothing stays up for 0.15 s
 * @throws DomainError 'not-enough-data', 'input-out-of-range'
 * @source convention
 */
export function airborneSpan(lowestFoot: readonly number[], rateHz: number): AirborneSpan | null {
  refuseUnusable('airborneSpan', lowestFoot, 3);
  const low = lowestFoot.toSorted((a, b) => a - b)[Math.floor(0.05 * (lowestFoot.length - 1))] as number;
  let best: { first: number; last: number } | null = null;
  let first: number | null = null;
  lowestFoot.forEach((y, i) => {
    if (y <= low + CONTACT_HEIGHT_M) {
      first = null;
      return;
    }
    first ??= i;
    if (best === null || i - first > best.last - best.first) best = { first, last: i };
  });
  const span = best as { first: number; last: number } | null;
  if (span === null || (span.last - span.first + 1) / rateHz < SHORTEST_FLIGHT_S) return null;
  return {
    takeoff: span.first === 0 ? null : span.first - 1,
    landing: span.last === lowestFoot.length - 1 ? null : span.last + 1,
  };
}
