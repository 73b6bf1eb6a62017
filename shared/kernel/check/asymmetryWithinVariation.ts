import type { CaseCheck } from '../../assess/assessment.ts';
import type { Source } from '../../quantity.ts';
import type { Unit } from '../../units.ts';
import { ASYMMETRY_FORMULAS, type AsymmetryId } from '../change/asymmetryFormulas.ts';
import { sidesAgainstVariation } from '../change/sidesAgainstVariation.ts';
import { cannotTell, fine, inPercent, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'A difference is real only if bigger than the variation within a limb: Exell et al., quoted by Bishop et al. 2016, Strength Cond J 38(6):27-32. Three trials a side: convention',
  status: 'published',
};

/**
 * Mistake 25: is a difference between sides called real that is smaller than the difference from trial to trial?
 *
 * @param seen trials of each side in one unit, all above zero, and the formula by name
 * @source Exell et al., quoted by Bishop et al. 2016; three trials a side: convention
 */
export function asymmetryWithinVariation(seen: {
  readonly formula: AsymmetryId;
  readonly left: readonly number[];
  readonly right: readonly number[];
  readonly unit: Unit;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'asymmetry-within-variation', about: seen.about, source: SOURCE };
  if ([...seen.left, ...seen.right].some((value) => !(Number.isFinite(value) && value > 0))) {
    return cannotTell(base, 'Whether the sides truly differ cannot be told: a trial is missing or is not above zero.');
  }
  const compared = sidesAgainstVariation(seen.formula, seen.left, seen.right, seen.unit);
  if ('unknown' in compared) return cannotTell(base, compared.unknown);
  const { even } = ASYMMETRY_FORMULAS.find(({ id }) => id === seen.formula) ?? { even: 0 };
  const size = Math.abs(compared.asymmetry.value - even);
  if (compared.isBeyondVariation) {
    return fine(base, `The sides differ by ${inPercent(size)} %, more than their trials do.`);
  }
  return questioned(
    base,
    `The sides differ by ${inPercent(size)} %, yet trials of one side already vary by ${inPercent(compared.variation.value)} %. This is no difference to act on.`,
    { label: `Difference, ${compared.asymmetry.working.name}`, value: size, unit: '1' },
    { label: 'Variation from trial to trial', value: compared.variation.value, unit: '1' },
  );
}
