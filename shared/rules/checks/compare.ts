import { DomainError } from '../../errors.ts';
import type { Comparator } from '../rule.ts';

/** Numbers a value is held against: one limit, or the two ends of a range. */
export type Limits = readonly [number] | readonly [number, number];

export interface Comparison {
  readonly isMet: boolean;
  /** Distance from the value to the nearest limit, same unit, 0 or more. */
  readonly distance: number;
}

/**
 * Holds a number against one limit or a range. `between` counts both ends in; `outside` is below the first or above
 * the second.
 * @throws DomainError 'input-out-of-range' for a value or limit that is not finite, 'input-malformed' for a range
 * with a one-sided comparator or the reverse
 */
export function compare(value: number, comparator: Comparator, limits: Limits): Comparison {
  if (![value, ...limits].every(Number.isFinite)) {
    throw new DomainError(
      'input-out-of-range',
      `compare needs finite numbers, got ${value} against ${limits.join(' to ')}`,
    );
  }
  const [low, high] = limits;
  const isRange = comparator === 'between' || comparator === 'outside';
  if (isRange !== (high !== undefined)) {
    throw new DomainError(
      'input-malformed',
      `compare needs ${isRange ? 'two limits' : 'one limit'} for "${comparator}"`,
    );
  }
  const distance = Math.min(...limits.map((limit) => Math.abs(value - limit)));
  return { isMet: isMet(value, comparator, low, high ?? low), distance };
}

function isMet(value: number, comparator: Comparator, low: number, high: number): boolean {
  switch (comparator) {
    case '<':
      return value < low;
    case '<=':
      return value <= low;
    case '>':
      return value > low;
    case '>=':
      return value >= low;
    case 'is':
      return value === low;
    case 'between':
      return value >= low && value <= high;
    case 'outside':
      return value < low || value > high;
  }
}
