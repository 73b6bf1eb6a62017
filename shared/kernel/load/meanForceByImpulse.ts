import type { Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { requirePositive } from '../quantity/requirePositive.ts';

/**
 * Mean net force that changes a velocity along one line within a time: F = m (v_2 − v_1) / t, by impulse and momentum.
 * For a ball: from the start of the arm's forward movement (v_1 about 0) to release; or from −v_1 to v_2 in a strike.
 *
 * @param mass kg, > 0
 * @param before m/s, along the line, signed
 * @param after m/s, along the same line
 * @param duration s, > 0
 * @returns N, mean over time of the net force; the hand's push also holds the ball's weight
 * @throws DomainError 'input-out-of-range' if mass or duration is not above zero
 * @source impulse-momentum theorem
 */
export function meanForceByImpulse(
  mass: Quantity<'kg'>,
  before: Quantity<'m/s'>,
  after: Quantity<'m/s'>,
  duration: Quantity<'s'>,
): Quantity<'N'> {
  requirePositive('meanForceByImpulse', mass, duration);
  return derive(
    {
      symbol: 'F',
      name: 'mean net force',
      unit: 'N',
      formula: 'F = m (v_2 - v_1) / t',
      variant: 'mean over time',
      source: { cite: 'Impulse-momentum theorem', status: 'derived' },
    },
    { m: mass, v_2: after, v_1: before, t: duration },
    ({ m, v_2, v_1, t }) => (m * (v_2 - v_1)) / t,
  );
}
