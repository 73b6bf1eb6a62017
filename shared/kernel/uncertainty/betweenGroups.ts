import { DomainError } from '../../errors.ts';
import { deviationOf, meanOf } from './readings.ts';

export interface BetweenGroups {
  readonly mean: number;
  /** Standard deviation of the group means, and what it makes of a single reading: √k times it. */
  readonly deviationOfMeans: number;
  readonly fromMeans: number;
  /** Pooled standard deviation within groups. */
  readonly within: number;
  /** Variance ratio; large where groups differ by more than their own scatter. */
  readonly f: number;
  readonly degrees: readonly [between: number, within: number];
  /** Standard deviation between groups alone; 0 where the scatter within explains it all. */
  readonly between: number;
  /** Standard uncertainty of the mean with groups as the unit, degrees[0] degrees of freedom. */
  readonly u: number;
}

/**
 * Scatter between and within groups of equal size, such as trials within sessions (one-way analysis of variance).
 *
 * @param groups mean, sample standard deviation (n − 1) and size of each; two groups or more, equal sizes of two or more
 * @throws DomainError 'not-enough-data', 'input-malformed'
 * @source JCGM 100:2008, H.5
 */
export function betweenGroups(
  groups: readonly { readonly mean: number; readonly deviation: number; readonly size: number }[],
): BetweenGroups {
  const size = groups[0]?.size ?? 0;
  if (groups.length < 2 || size < 2) {
    throw new DomainError(
      'not-enough-data',
      `betweenGroups needs two groups of two readings or more, got ${groups.length} groups of ${size}`,
    );
  }
  if (!groups.every((group) => group.size === size && Number.isFinite(group.mean) && group.deviation >= 0)) {
    throw new DomainError('input-malformed', 'betweenGroups needs groups of one size with finite means and spreads');
  }
  const means = groups.map(({ mean }) => mean);
  const deviationOfMeans = deviationOf(means);
  const within2 = meanOf(groups.map(({ deviation }) => deviation ** 2));
  const fromMeans2 = size * deviationOfMeans ** 2;
  return {
    mean: meanOf(means),
    deviationOfMeans,
    fromMeans: Math.sqrt(fromMeans2),
    within: Math.sqrt(within2),
    f: fromMeans2 / within2,
    degrees: [groups.length - 1, groups.length * (size - 1)],
    between: Math.sqrt(Math.max(0, (fromMeans2 - within2) / size)),
    u: deviationOfMeans / Math.sqrt(groups.length),
  };
}
