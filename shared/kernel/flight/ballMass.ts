import type { Ball } from '../../knowledge/balls/ball.ts';
import { measured, type Quantity } from '../../quantity.ts';

/**
 * Mass of a ball as its rules allow it: the middle of the range, the range as a rectangular distribution.
 *
 * @returns kg
 * @source the ball's own; JCGM 100:2008, 4.3.7
 */
export function ballMass({ massKg: [least, most], source }: Ball): Quantity<'kg'> {
  return measured('m', 'Mass', (least + most) / 2, 'kg', (most - least) / Math.sqrt(12), source);
}
