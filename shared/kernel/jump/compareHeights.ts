import type { Quantity, Unknown } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { type JumpHeight, unlikeness } from './unlikeness.ts';

export interface HeightComparison {
  /** b − a. */
  readonly difference: Quantity<'m'>;
  /** b / a; null where a is zero. */
  readonly ratio: Quantity<'1'> | null;
  /** Whether the difference exceeds twice its standard uncertainty; null where it has none. */
  readonly isClear: boolean | null;
}

/**
 * Compares two jump heights, if they are alike: same reference, same method, same use of the arms. Unlike
 * heights are never compared silently.
 *
 * @returns the comparison, or unknown with what differs or is not recorded
 * @source definition; what counts as alike: unlikeness
 */
export function compareHeights(a: JumpHeight, b: JumpHeight): HeightComparison | Unknown {
  const { differs, unrecorded } = unlikeness(a, b);
  const obstacles = [...differs, ...unrecorded];
  if (obstacles.length > 0) return { unknown: `These heights cannot be compared: ${obstacles.join('; ')}.` };
  const source = { cite: 'Definition', status: 'convention' } as const;
  const inputs = { h_b: b.quantity, h_a: a.quantity };
  const difference = derive(
    { symbol: 'Δh', name: 'difference in jump height', unit: 'm', formula: 'Δh = h_b - h_a', source },
    inputs,
    ({ h_b, h_a }) => h_b - h_a,
  );
  const ratio =
    a.quantity.value === 0
      ? null
      : derive(
          { symbol: 'R', name: 'ratio of jump heights', unit: '1', formula: 'R = h_b / h_a', source },
          inputs,
          ({ h_b, h_a }) => h_b / h_a,
        );
  return {
    difference,
    ratio,
    isClear: difference.u === null ? null : Math.abs(difference.value) > 2 * difference.u,
  };
}
