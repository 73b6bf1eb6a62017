import { DomainError } from '../../errors.ts';
import type { Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { requirePositive } from '../quantity/requirePositive.ts';
import { ASYMMETRY_FORMULAS, type AsymmetryFormula, type AsymmetryId } from './asymmetryFormulas.ts';

/**
 * Difference between two sides by one named formula.
 *
 * @param a side named first, > 0 (stronger, dominant or right: say which beside the result)
 * @param b other side, > 0, same unit
 * @returns ratio without unit; positive where `a` is the greater (percentage difference: always positive; limb
 *   symmetry: 1 where even)
 * @throws DomainError 'not-found' for an unknown formula, 'unit-mismatch', 'input-out-of-range' unless both are above zero
 * @source each formula's own; Bishop, Read, Chavda & Turner 2016, Strength Cond J 38(6):27-32
 */
export function asymmetry(id: AsymmetryId, a: Quantity, b: Quantity): Quantity<'1'> {
  const formula: AsymmetryFormula | undefined = ASYMMETRY_FORMULAS.find((candidate) => candidate.id === id);
  if (!formula) throw new DomainError('not-found', `asymmetry knows no formula called ${id}`);
  if (a.unit !== b.unit) {
    throw new DomainError('unit-mismatch', `asymmetry needs both sides in one unit, got ${a.unit} and ${b.unit}`);
  }
  requirePositive('asymmetry', a, b);
  return derive(
    { symbol: formula.symbol, name: formula.name, unit: '1', formula: formula.formula, source: formula.source },
    { a, b },
    (values) => formula.compute(values.a, values.b),
  );
}
