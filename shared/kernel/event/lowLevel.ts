import { refuseUnusable } from '../signal/refuseUnusable.ts';

/**
 * How low something is when it is down: the 5th percentile of its heights, so that a few misread frames do not say.
 *
 * @param heights any unit, finite, at least 3
 * @returns in the unit of the heights
 * @throws DomainError 'not-enough-data', 'input-out-of-range'
 * @source convention
 */
export function lowLevel(heights: readonly number[]): number {
  refuseUnusable('lowLevel', heights, 3);
  return heights.toSorted((a, b) => a - b)[Math.floor(0.05 * (heights.length - 1))] as number;
}
