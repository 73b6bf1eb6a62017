import { refuseUnusable } from '../signal/refuseUnusable.ts';
import { lowLevel } from './lowLevel.ts';

/** A foot this far above its lowest stands on the floor: a convention, above digitising noise and below any step. */
export const CONTACT_HEIGHT_M = 0.03;
/** How much of the contact beside the flight says where the floor is there: a convention. */
const BESIDE_S = 0.1;
/** Shorter stretches off the floor are steps or noise: a convention. */
const SHORTEST_FLIGHT_S = 0.15;

export interface AirborneSpan {
  /** Last sample in contact before, and first in contact after; null where the record starts or ends in the air. */
  readonly takeoff: number | null;
  readonly landing: number | null;
}

/**
 * When a body leaves the floor and comes back, from the height of its lowest foot: the longest stretch with that foot
 * more than 3 cm above its own low level (lowLevel). Each end is then found again against the level of the
 * foot in the 0.1 s of contact beside it, because a digitised floor is rarely level.
 *
 * @param lowestFoot m, evenly spaced, finite
 * @param rateHz samples a second
 * @returns null where nothing stays up for 0.15 s
 * @throws DomainError 'not-enough-data', 'input-out-of-range'
 * @source convention
 */
export function airborneSpan(lowestFoot: readonly number[], rateHz: number): AirborneSpan | null {
  refuseUnusable('airborneSpan', lowestFoot, 3);
  const low = lowLevel(lowestFoot);
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
  const beside = Math.max(3, Math.round(BESIDE_S * rateHz));
  const { first: up, last: down } = span;
  const before = floorLevel(lowestFoot.slice(Math.max(0, up - beside), up));
  const after = floorLevel(lowestFoot.slice(down + 1, down + 1 + beside));
  const top = lowestFoot.reduce(
    (best, y, i) => (i >= up && i <= down && y > (lowestFoot[best] as number) ? i : best),
    up,
  );
  const takeoff = lowestFoot.findLastIndex((y, i) => i < top && y <= before);
  const landing = lowestFoot.findIndex((y, i) => i > top && y <= after);
  return { takeoff: takeoff === -1 ? null : takeoff, landing: landing === -1 ? null : landing };
}

/** The middle of the heights in contact, and 3 cm more. */
function floorLevel(heights: readonly number[]): number {
  const middle = heights.toSorted((a, b) => a - b)[Math.floor(heights.length / 2)];
  return middle === undefined ? Number.NEGATIVE_INFINITY : middle + CONTACT_HEIGHT_M;
}
