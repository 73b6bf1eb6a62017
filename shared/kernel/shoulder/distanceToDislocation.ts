import type { Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';

/**
 * Distance from the edge of the lesion to the edge of the track: DTD = GT − HSI. Below 0 the lesion is off the track and
 * may engage; less than 8 mm best told failures apart in one series. For the surgeon.
 *
 * @param track m
 * @param interval m
 * @returns m
 * @source Di Giacomo 2014 (off-track); Li 2021 (distance, 173 repairs)
 */
export function distanceToDislocation(track: Quantity<'m'>, interval: Quantity<'m'>): Quantity<'m'> {
  return derive(
    {
      symbol: 'DTD',
      name: 'distance to dislocation',
      unit: 'm',
      formula: 'DTD = GT - HSI',
      variant: 'track less interval',
      source: { cite: 'Di Giacomo 2014; Li 2021', status: 'published' },
    },
    { GT: track, HSI: interval },
    ({ GT, HSI }) => GT - HSI,
  );
}
