import { DomainError } from '../../errors.ts';

/** √3, √6, √2: standard deviation of a distribution of half-width 1 is 1 over this (JCGM 100:2008, 4.3.7, 4.3.9, H.1.3.4). */
const DIVISOR = { rectangular: Math.sqrt(3), triangular: Math.sqrt(6), arcsine: Math.SQRT2 } as const;

/**
 * Standard uncertainty of a value known to lie within ± a half-width.
 *
 * @param halfWidth ≥ 0
 * @param shape arcsine: a quantity that swings to and fro between the limits
 * @returns in the unit of the half-width
 * @throws DomainError 'input-out-of-range'
 * @source JCGM 100:2008, 4.3.7 to 4.3.9
 */
export function fromHalfWidth(halfWidth: number, shape: keyof typeof DIVISOR): number {
  if (!(Number.isFinite(halfWidth) && halfWidth >= 0)) {
    throw new DomainError('input-out-of-range', `fromHalfWidth needs a half-width of 0 or more, got ${halfWidth}`);
  }
  return halfWidth / DIVISOR[shape];
}
