import type { Quantity, Unknown } from '../../quantity.ts';
import type { Unit } from '../../units.ts';
import { DomainError } from '../../errors.ts';
import { derive } from '../quantity/derive.ts';

export interface ChangeJudgment<U extends Unit> {
  readonly change: Quantity<U>;
  /** Whether the change exceeds what measurement error alone would show in 95 of 100 retests. */
  readonly isBeyondError: boolean;
}

/**
 * Has a measure truly changed? Compares a change with the minimal detectable change of the test; without one, with
 * twice the standard uncertainty of the change itself.
 *
 * @param before, after in one unit, measured alike
 * @param detectable minimal detectable change in that unit; null: none is known for this test
 * @returns unknown where neither an MDC nor uncertainties are known
 * @throws DomainError 'unit-mismatch'
 * @source definition of the minimal detectable change; two standard uncertainties: convention
 */
export function judgeChange<U extends Unit>(
  before: Quantity<U>,
  after: Quantity<U>,
  detectable: Quantity<U> | null,
): ChangeJudgment<U> | Unknown {
  if (before.unit !== after.unit || (detectable !== null && detectable.unit !== before.unit)) {
    throw new DomainError('unit-mismatch', 'judgeChange needs both values and the detectable change in one unit');
  }
  const change = derive(
    {
      symbol: 'Δx',
      name: 'change',
      unit: before.unit,
      formula: 'Δx = x_2 - x_1',
      source: { cite: 'Definition', status: 'convention' },
    },
    { x_2: after, x_1: before },
    ({ x_2, x_1 }) => x_2 - x_1,
  );
  const limit = detectable?.value ?? (change.u === null ? null : 2 * change.u);
  if (limit === null) {
    return {
      unknown: `Whether this is a true change cannot be told: the test has no minimal detectable change on record, and ${change.uReason}.`,
    };
  }
  return { change, isBeyondError: Math.abs(change.value) > limit };
}
