import type { CaseCheck } from '../../assess/assessment.ts';
import type { SideOrNone } from '../../model/parts.ts';
import type { Source } from '../../quantity.ts';
import { ASYMMETRY_FORMULAS, type AsymmetryFormula, type AsymmetryId } from '../change/asymmetryFormulas.ts';
import { cannotTell, fine, inPercent, isNear, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'Nine equations in use, so name the one shown: Bishop, Read, Chavda & Turner 2016, Strength Cond J 38(6):27-32',
  status: 'published',
};

/** Rounding of a typed percentage. Convention. */
const SAME = 0.02;

/**
 * Mistake 24: is a difference between sides given without the formula or the weaker side? One pair of values gives 8.4,
 * 4.4, 8.8 or 2.8 % by different formulas.
 *
 * @param seen difference as stated, ratio; formula, null: not named; weaker side, `none`: not said; both values where known
 * @source Bishop, Read, Chavda & Turner 2016, Strength Cond J 38(6):27-32
 */
export function asymmetryUnnamed(seen: {
  readonly stated: number | null;
  readonly formula: AsymmetryId | null;
  readonly weakerSide: SideOrNone;
  readonly sides: { readonly left: number; readonly right: number } | null;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'asymmetry-unnamed', about: seen.about, source: SOURCE };
  const { stated, formula, weakerSide, sides } = seen;
  if (stated === null) return cannotTell(base, 'There is no difference between sides to look at.');
  const label = 'Difference as stated';
  if (formula === null) {
    if (sides === null || !(sides.left > 0 && sides.right > 0)) {
      return cannotTell(
        base,
        'Which formula this difference came from cannot be told: neither it nor both values are recorded.',
      );
    }
    const [b, a] = [sides.left, sides.right].toSorted((p, q) => p - q) as [number, number];
    const formulas: readonly AsymmetryFormula[] = ASYMMETRY_FORMULAS;
    const named = formulas.find((one) => isNear(Math.abs(stated), Math.abs(one.compute(a, b)), SAME));
    const other = formulas.find((one) => one !== named && one.even === 0) as AsymmetryFormula;
    return questioned(
      base,
      `${inPercent(Math.abs(stated))} % is a difference ${named === undefined ? 'by no formula known here' : `by the ${named.name}`}; by the ${other.name} the same values give ${inPercent(other.compute(a, b))} %. Name the formula beside the number.`,
      { label, value: stated, unit: '1' },
      { label: `By the ${other.name}`, value: other.compute(a, b), unit: '1' },
    );
  }
  if (weakerSide === 'none' && Math.abs(stated) > 0) {
    return questioned(
      base,
      `A difference of ${inPercent(Math.abs(stated))} % without a side says nothing to anyone who trains it: name the weaker side.`,
      { label, value: stated, unit: '1' },
    );
  }
  return fine(base, 'Formula and side are named.');
}
