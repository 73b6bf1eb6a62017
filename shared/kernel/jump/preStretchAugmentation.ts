import type { Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { requirePositive } from '../quantity/requirePositive.ts';

/**
 * Gain of the countermovement jump over the squat jump, in parts of the squat jump: (h_CMJ − h_SJ) / h_SJ.
 *
 * @param countermovement m, > 0
 * @param squat m, > 0, measured the same way
 * @returns a ratio without unit (0.094 is 9.4 %)
 * @throws DomainError 'input-out-of-range' if either is not above zero
 * @source textbook definition, from memory
 */
export function preStretchAugmentation(countermovement: Quantity<'m'>, squat: Quantity<'m'>): Quantity<'1'> {
  requirePositive('preStretchAugmentation', countermovement, squat);
  return derive(
    {
      symbol: 'PSA',
      name: 'pre-stretch augmentation',
      unit: '1',
      formula: 'PSA = (h_CMJ - h_SJ) / h_SJ',
      source: { cite: 'Textbook definition, from memory', status: 'from memory' },
    },
    { h_CMJ: countermovement, h_SJ: squat },
    ({ h_CMJ, h_SJ }) => (h_CMJ - h_SJ) / h_SJ,
  );
}
