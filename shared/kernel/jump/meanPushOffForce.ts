import type { Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { requirePositive } from '../quantity/requirePositive.ts';

/**
 * Mean vertical ground force over the push-off, from work and energy: F = W (1 + h / s). It answers how much more than
 * body weight a jump needs: a force equal to body weight accelerates nothing.
 *
 * @param weight N, > 0
 * @param height m, > 0, rise above take-off
 * @param pushOffDistance m, > 0, rise of the centre of mass from its lowest place to take-off
 * @returns N, the mean over distance (not over time)
 * @throws DomainError 'input-out-of-range' if any is not above zero
 * @source work-energy theorem
 */
export function meanPushOffForce(
  weight: Quantity<'N'>,
  height: Quantity<'m'>,
  pushOffDistance: Quantity<'m'>,
): Quantity<'N'> {
  requirePositive('meanPushOffForce', weight, height, pushOffDistance);
  return derive(
    {
      symbol: 'F',
      name: 'mean push-off force',
      unit: 'N',
      formula: 'F = W (1 + h / s)',
      variant: 'mean over the push-off distance',
      source: {
        cite: 'Work-energy theorem: the work of the net force over s equals the potential energy gained over h',
        status: 'derived',
      },
    },
    { W: weight, h: height, s: pushOffDistance },
    ({ W, h, s }) => W * (1 + h / s),
  );
}
