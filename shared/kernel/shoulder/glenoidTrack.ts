import type { Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';

/**
 * Width of the socket's track on the head: GT = 0.83 D − d, from numbers of a report; nothing is measured on screen.
 *
 * @param glenoidWidth D, m
 * @param anteriorDefect d, m; 0 for none
 * @returns m
 * @source Di Giacomo 2014, restated in Open Orthop J 2017;11:919
 */
export function glenoidTrack(glenoidWidth: Quantity<'m'>, anteriorDefect: Quantity<'m'>): Quantity<'m'> {
  return derive(
    {
      symbol: 'GT',
      name: 'glenoid track',
      unit: 'm',
      formula: 'GT = 0.83 D - d',
      variant: 'front defect taken off',
      source: { cite: 'Di Giacomo 2014; restated in Open Orthopaedics Journal 2017;11:919', status: 'published' },
    },
    { D: glenoidWidth, d: anteriorDefect },
    ({ D, d }) => 0.83 * D - d,
  );
}
