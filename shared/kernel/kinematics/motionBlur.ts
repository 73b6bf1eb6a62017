import { measured, type Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';

/**
 * How far something is smeared in one frame: b = v·τ.
 * @param speed m/s
 * @param exposure s that the shutter is open, > 0
 * @source definition
 */
export function motionBlur(speed: Quantity<'m/s'>, exposure: number): Quantity<'m'> {
  return derive(
    {
      symbol: 'b',
      name: 'Motion blur',
      unit: 'm',
      formula: 'b = v τ',
      source: { cite: 'Definition', status: 'derived' },
    },
    { v: speed, τ: measured('τ', 'Exposure', exposure, 's', 0) },
    ({ v, τ }) => v * τ,
  );
}
