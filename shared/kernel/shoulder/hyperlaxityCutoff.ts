import { DomainError } from '../../errors.ts';

/**
 * Points from which generalised laxity is spoken of: 6 before puberty, 5 from puberty to 50 years, 4 above 50. One point
 * short with two or more answers of yes to the five history questions counts as well; those are not asked here.
 *
 * @param ageYears 0 to 120
 * @param isPrepubertal null: not known, which matters below the age at which it no longer can be (18, convention)
 * @returns points, or null where puberty decides and is not known
 * @throws DomainError 'input-out-of-range' for an age no one has
 * @source Malfait 2017, Am J Med Genet C 175:8
 */
export function hyperlaxityCutoff(ageYears: number, isPrepubertal: boolean | null): 4 | 5 | 6 | null {
  if (!(ageYears >= 0 && ageYears <= 120)) {
    throw new DomainError(
      'input-out-of-range',
      `hyperlaxityCutoff needs an age from 0 to 120 years, and got ${ageYears}.`,
    );
  }
  if (ageYears > 50) return 4;
  if (ageYears >= 18) return 5;
  return isPrepubertal === null ? null : isPrepubertal ? 6 : 5;
}
