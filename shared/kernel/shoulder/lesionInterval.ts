import type { Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';

/**
 * How far the dent of the head reaches from the cuff: HSI = w + b, lesion width and bone bridge, from a report.
 *
 * @param lesionWidth w, m
 * @param boneBridge b, m
 * @returns m
 * @source Di Giacomo 2014, restated in Open Orthop J 2017;11:919
 */
export function lesionInterval(lesionWidth: Quantity<'m'>, boneBridge: Quantity<'m'>): Quantity<'m'> {
  return derive(
    {
      symbol: 'HSI',
      name: 'interval of the lesion',
      unit: 'm',
      formula: 'HSI = w + b',
      variant: 'to the footprint of the cuff',
      source: { cite: 'Di Giacomo 2014; restated in Open Orthopaedics Journal 2017;11:919', status: 'published' },
    },
    { w: lesionWidth, b: boneBridge },
    ({ w, b }) => w + b,
  );
}
