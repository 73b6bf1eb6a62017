import type { Athlete } from '../model/athlete.ts';
import type { RuleKind } from '../rules/rule.ts';
import type { TestResult } from './assessment.ts';

/**
 * Where on its axis a test holds, in the test's unit; an open end is null. Null altogether for a yes or no, a grade,
 * `outside`, or a threshold by a sex that is not given.
 */
export function groundOf(
  { comparator, threshold }: TestResult,
  sex: Athlete['referenceSex'],
): readonly [number | null, number | null] | null {
  if (comparator === 'between' && Array.isArray(threshold)) return [threshold[0], threshold[1]];
  const edge =
    typeof threshold === 'number'
      ? threshold
      : typeof threshold === 'object' && 'female' in threshold && (sex === 'female' || sex === 'male')
        ? threshold[sex]
        : null;
  if (edge === null) return null;
  if (comparator === '<' || comparator === '<=') return [null, edge];
  if (comparator === '>' || comparator === '>=') return [edge, null];
  return null;
}

/** What it means to lie on that ground. */
export const GROUND_WORDS = {
  referral: 'be seen',
  caution: 'take care',
  intervention: 'to work on',
  monitor: 'to watch',
  confirmation: 'as hoped for',
} as const satisfies Record<RuleKind, string>;
