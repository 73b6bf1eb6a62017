import { DomainError } from '../../errors.ts';
import type { Quantity, Unknown } from '../../quantity.ts';
import type { Unit } from '../../units.ts';
import { meanReading } from '../uncertainty/meanReading.ts';
import { requireReadings } from '../uncertainty/readings.ts';
import { asymmetry } from './asymmetry.ts';
import { ASYMMETRY_FORMULAS, type AsymmetryId } from './asymmetryFormulas.ts';
import { coefficientOfVariation } from './coefficientOfVariation.ts';

export interface SidesComparison {
  readonly asymmetry: Quantity<'1'>;
  /** The larger of both sides' coefficients of variation. */
  readonly variation: Quantity<'1'>;
  /** Whether the difference between sides exceeds the variation within them. */
  readonly isBeyondVariation: boolean;
}

const LEAST_TRIALS = 3;

/**
 * Difference between sides against the variation from trial to trial within each: a difference inside that variation
 * is not called real.
 *
 * @param first readings of the side named first, > 0, in `unit`
 * @param second readings of the other side
 * @returns unknown with fewer than three trials a side
 * @throws DomainError 'input-out-of-range' for a reading that is not above zero
 * @source Exell et al., as quoted by Bishop et al. 2016, Strength Cond J 38(6):27-32: real only if bigger than the
 *   variation within a limb. Three trials a side: convention
 */
export function sidesAgainstVariation(
  id: AsymmetryId,
  first: readonly number[],
  second: readonly number[],
  unit: Unit,
): SidesComparison | Unknown {
  if (first.length < LEAST_TRIALS || second.length < LEAST_TRIALS) {
    return {
      unknown: `Whether the sides truly differ takes at least ${LEAST_TRIALS} trials a side; there are ${first.length} and ${second.length}.`,
    };
  }
  for (const readings of [first, second]) {
    requireReadings('sidesAgainstVariation', readings, LEAST_TRIALS);
    const bad = readings.find((reading) => !(reading > 0));
    if (bad !== undefined) {
      throw new DomainError('input-out-of-range', `sidesAgainstVariation needs readings above 0, got ${bad}`);
    }
  }
  const between = asymmetry(
    id,
    meanReading('a', 'mean of the first side', first, unit),
    meanReading('b', 'mean of the second side', second, unit),
  );
  const variations = [coefficientOfVariation(first, unit), coefficientOfVariation(second, unit)] as const;
  const variation = variations[0].value >= variations[1].value ? variations[0] : variations[1];
  const { even } = ASYMMETRY_FORMULAS.find((formula) => formula.id === id) ?? { even: 0 };
  return { asymmetry: between, variation, isBeyondVariation: Math.abs(between.value - even) > variation.value };
}
