import type { PointU } from '../plane/point.ts';

/**
 * What each sample of a path errs by for itself, when part of its error is in all of them: that part shifts the path and
 * bends nothing.
 *
 * @param pointU standard uncertainty of one coordinate, m, or why there is none
 * @param sharedU the part of it that all samples have in common, m
 * @returns m; 0 where nothing is known of it
 * @source variances of independent errors add, JCGM 100:2008, 5.1
 */
export function ownU(pointU: PointU, sharedU = 0): number {
  return typeof pointU === 'number' ? Math.sqrt(Math.max(0, pointU ** 2 - sharedU ** 2)) : 0;
}
