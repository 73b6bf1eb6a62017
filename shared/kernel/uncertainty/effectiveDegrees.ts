import { DomainError } from '../../errors.ts';

/**
 * Effective degrees of freedom of a combined uncertainty: ν_eff = u_c⁴ / Σ(u_i⁴ / ν_i).
 *
 * @param contributions cᵢuᵢ in the unit of the result, with their degrees of freedom (Infinity: known exactly)
 * @returns not cut down; Infinity where nothing limits it
 * @throws DomainError 'input-out-of-range' for a negative contribution or degrees below 1
 * @source Welch-Satterthwaite formula, JCGM 100:2008, G.4.1
 */
export function effectiveDegrees(contributions: readonly { readonly u: number; readonly degrees: number }[]): number {
  let variance = 0;
  let divided = 0;
  for (const { u, degrees } of contributions) {
    if (!(u >= 0 && Number.isFinite(u) && degrees >= 1)) {
      throw new DomainError(
        'input-out-of-range',
        `effectiveDegrees needs u ≥ 0 and at least 1 degree of freedom, got ${u} and ${degrees}`,
      );
    }
    variance += u * u;
    divided += u ** 4 / degrees;
  }
  return divided === 0 ? Number.POSITIVE_INFINITY : variance ** 2 / divided;
}
