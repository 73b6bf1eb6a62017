import { measureById } from '../../knowledge/measures/index.ts';
import { convert } from '../../units.ts';
import type { Test } from '../rule.ts';

/** Where on the number line a test is met, in the measure's SI unit; open ends may be shared by two spans. */
export interface Span {
  readonly low: number;
  readonly high: number;
  readonly isLowOpen: boolean;
  readonly isHighOpen: boolean;
}

const ALL: Span = { low: -Infinity, high: Infinity, isLowOpen: true, isHighOpen: true };

/** The spans of a test on numbers, widest over the sexes where the threshold differs; none for flags and grades. */
export function spansOf(test: Test): readonly Span[] {
  const unit = measureById(test.measure)?.unit ?? null;
  if (unit === null || test.unit === null) return [];
  const { threshold, unit: written } = test;
  const si = (value: number): number => convert(value, written, unit);
  if (typeof threshold === 'number') return spansFor(test.comparator, [si(threshold), si(threshold)]);
  if (typeof threshold !== 'object') return [];
  if ('female' in threshold) {
    return [threshold.female, threshold.male].flatMap((one) => spansFor(test.comparator, [si(one), si(one)]));
  }
  return spansFor(test.comparator, [si(threshold[0]), si(threshold[1])]);
}

function spansFor(comparator: Test['comparator'], [low, high]: readonly [number, number]): Span[] {
  switch (comparator) {
    case '<':
      return [{ ...ALL, high: low }];
    case '<=':
      return [{ ...ALL, high: low, isHighOpen: false }];
    case '>':
      return [{ ...ALL, low }];
    case '>=':
      return [{ ...ALL, low, isLowOpen: false }];
    case 'is':
    case 'between':
      return [{ low, high, isLowOpen: false, isHighOpen: false }];
    case 'outside':
      return [
        { ...ALL, high: low },
        { ...ALL, low: high },
      ];
  }
}

/** Whether two spans share a point. */
export function doOverlap(a: Span, b: Span): boolean {
  const [first, second] = a.low <= b.low ? [a, b] : [b, a];
  if (second.low < first.high) return true;
  return second.low === first.high && !second.isLowOpen && !first.isHighOpen;
}
