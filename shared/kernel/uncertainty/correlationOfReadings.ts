import { DomainError } from '../../errors.ts';
import { deviationOf, meanOf, requireReadings } from './readings.ts';

/**
 * Correlation coefficient of two quantities read together, which is also that of their means.
 *
 * @param a at least two readings; `b` taken at the same instants
 * @returns −1 to 1; 0 where either does not vary
 * @throws DomainError 'not-enough-data', 'input-malformed' for lists of unlike length, 'input-out-of-range'
 * @source JCGM 100:2008, 5.2.3 and C.3.6
 */
export function correlationOfReadings(a: readonly number[], b: readonly number[]): number {
  requireReadings('correlationOfReadings', a, 2);
  requireReadings('correlationOfReadings', b, 2);
  if (a.length !== b.length) {
    throw new DomainError('input-malformed', `correlationOfReadings needs pairs, got ${a.length} and ${b.length}`);
  }
  const [meanA, meanB] = [meanOf(a), meanOf(b)];
  const covariance = a.reduce((sum, x, k) => sum + (x - meanA) * ((b[k] as number) - meanB), 0) / (a.length - 1);
  const scale = deviationOf(a) * deviationOf(b);
  return scale === 0 ? 0 : covariance / scale;
}
