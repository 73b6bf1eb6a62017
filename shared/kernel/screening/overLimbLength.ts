import type { Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';

/**
 * A distance over the length of a limb, so that people of different size compare: `r = d / L`.
 *
 * Variant: the length of the limb of the same side, a leg from the front of the hip bone to the inner ankle.
 * @param distance reached or hopped, m
 * @param limb length of the limb, m, more than 0
 * @returns ratio, 1; 1.5 is one and a half limb lengths, printed as 150 %
 * @throws DomainError 'input-out-of-range' if the ratio is not finite
 * @source J Athl Train 2018;53:35 (3951 high-school athletes: single hop in percent of leg length)
 */
export function overLimbLength(distance: Quantity<'m'>, limb: Quantity<'m'>): Quantity<'1'> {
  return derive(
    {
      symbol: 'r',
      name: 'distance over limb length',
      unit: '1',
      formula: 'r = d / L',
      variant: 'limb of the same side',
      source: { cite: 'Single hop in percent of leg length: J Athl Train 2018;53:35', status: 'published' },
    },
    { d: distance, L: limb },
    ({ d, L }) => d / L,
  );
}
