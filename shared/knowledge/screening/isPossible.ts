import { convert } from '../../units.ts';
import { possibleRangeSi } from '../measures/index.ts';
import type { BatteryItem } from './battery.ts';

/** Whether a test can give a value, in the SI unit that results are kept in. */
export function isPossible({ measure, possible, unit, displayUnit }: BatteryItem, valueSi: number): boolean {
  const range =
    possible === null || unit === null || displayUnit === null
      ? possibleRangeSi(measure)
      : possible.map((end) => convert(end, displayUnit, unit));
  // What was converted for storing may miss the end of the range by the last digit.
  const [low = -Infinity, high = Infinity] = range ?? [];
  const slack = 1e-9 * Math.max(1, Math.abs(low), Math.abs(high));
  return valueSi >= low - slack && valueSi <= high + slack;
}
