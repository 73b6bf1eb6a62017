import { DomainError } from '../../errors.ts';
import type { Quantity } from '../../quantity.ts';

/**
 * Guards the door of a function that makes no sense for zero or less.
 * @throws DomainError 'input-out-of-range' naming the function, its need and what it got
 * @source the formulas that call it divide by what they guard, or take its root
 */
export function requirePositive(needer: string, ...quantities: readonly Quantity[]): void {
  for (const { value, unit, working } of quantities) {
    if (!(value > 0 && Number.isFinite(value))) {
      throw new DomainError('input-out-of-range', `${needer} needs a ${working.name} above 0, got ${value} ${unit}`);
    }
  }
}
