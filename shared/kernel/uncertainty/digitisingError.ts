import { DomainError } from '../../errors.ts';
import type { PointRepeat } from '../../model/trial.ts';
import { measured, type Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';

/** Fewer points put down twice say too little of a person's own error: a convention. */
export const LEAST_REPEATS = 3;

/**
 * A person's own error in putting down a point, from points put down twice: the technical error of measurement,
 * TEM = √(Σ d² / 2n), of one coordinate, both coordinates pooled. A shift between the two rounds counts as error too.
 * Its own uncertainty is that of a standard deviation of as many differences, TEM / √(2 · 2n).
 *
 * @param repeats at least three points, px
 * @returns px, of one coordinate put down once, ≥ 0
 * @throws DomainError 'not-enough-data'
 * @source Dahlberg 1940, Statistical Methods for Medical and Biological Students (from memory); JCGM 100:2008, E.4.3 for
 *   the uncertainty of a standard deviation
 */
export function digitisingError(repeats: readonly Pick<PointRepeat, 'first' | 'again'>[]): Quantity<'{px}'> {
  if (repeats.length < LEAST_REPEATS) {
    throw new DomainError(
      'not-enough-data',
      `digitisingError needs at least ${LEAST_REPEATS} points put down twice, got ${repeats.length}`,
    );
  }
  const differences = repeats.flatMap(({ first, again }) => [again.xPx - first.xPx, again.yPx - first.yPx]);
  const rms = Math.sqrt(differences.reduce((sum, d) => sum + d * d, 0) / differences.length);
  return derive(
    {
      symbol: 'TEM',
      name: 'own error of digitising, one coordinate',
      unit: '{px}',
      formula: 'TEM = d_rms / sqrt(2)',
      variant: `technical error of measurement, both coordinates of ${repeats.length} points put down twice`,
      source: { cite: 'Dahlberg 1940, Statistical Methods for Medical and Biological Students', status: 'from memory' },
    },
    {
      d_rms: measured(
        'd_rms',
        'root mean square of the differences',
        rms,
        '{px}',
        rms / Math.sqrt(2 * differences.length),
      ),
    },
    (p) => p.d_rms / Math.SQRT2,
  );
}
