import { DomainError } from '../../errors.ts';
import { measured, type Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';

/**
 * Rate of force development over a stated window: (F_2 − F_1) / (t_2 − t_1). The window decides the number, so it is
 * part of the result: mean from lowest to highest force, or over 0 to 50, 100, 200 ms, are different measures.
 *
 * @param forceN N, finite
 * @param rateHz samples a second
 * @param from first and `to` last sample of the window
 * @param forceU standard uncertainty of one reading, N, or why there is none
 * @returns N/s
 * @throws DomainError 'input-out-of-range' for a window that is empty or lies outside the record
 * @source definition
 */
export function rateOfForceDevelopment(
  forceN: ArrayLike<number>,
  rateHz: number,
  from: number,
  to: number,
  forceU: number | string,
): Quantity<'N/s'> {
  if (!(Number.isInteger(from) && Number.isInteger(to) && from >= 0 && to > from && to < forceN.length && rateHz > 0)) {
    throw new DomainError(
      'input-out-of-range',
      `rateOfForceDevelopment needs two samples of the record in order, got ${from} and ${to} of ${forceN.length}`,
    );
  }
  const sampleU = 1 / rateHz / Math.sqrt(12);
  const reading = (symbol: string, name: string, sample: number) =>
    measured(symbol, name, forceN[sample] as number, 'N', forceU);
  const instant = (symbol: string, sample: number) => measured(symbol, 'instant', sample / rateHz, 's', sampleU);
  return derive(
    {
      symbol: 'RFD',
      name: 'rate of force development',
      unit: 'N/s',
      formula: 'RFD = (F_2 - F_1) / (t_2 - t_1)',
      variant: `mean over ${((1000 * (to - from)) / rateHz).toFixed(0)} ms, ${(from / rateHz).toFixed(3)} to ${(to / rateHz).toFixed(3)} s`,
      source: { cite: 'Definition', status: 'convention' },
    },
    {
      F_2: reading('F_2', 'force at the end', to),
      F_1: reading('F_1', 'force at the start', from),
      t_2: instant('t_2', to),
      t_1: instant('t_1', from),
    },
    ({ F_2, F_1, t_2, t_1 }) => (F_2 - F_1) / (t_2 - t_1),
  );
}
