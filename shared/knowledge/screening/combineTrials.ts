import type { Trials } from './battery.ts';

/**
 * The one result of several trials: the highest, the lowest, or their arithmetic mean.
 * @param values at least one, in any one unit, which is also that of the result
 */
export function combineTrials(combine: Trials['combine'], values: readonly number[]): number {
  if (combine === 'highest') return Math.max(...values);
  if (combine === 'lowest') return Math.min(...values);
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** The same as a formula over x_1, x_2 and so on. */
export function combineFormula(combine: Trials['combine'], count: number): string {
  const names = Array.from({ length: count }, (_, i) => `x_${i + 1}`);
  if (combine === 'highest') return `x = max(${names.join(', ')})`;
  if (combine === 'lowest') return `x = min(${names.join(', ')})`;
  return `x = (${names.join(' + ')}) / ${count}`;
}
