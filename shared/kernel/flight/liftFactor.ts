import type { Ball } from '../../knowledge/balls/ball.ts';
import { measured, type Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { dragFactor } from './dragFactor.ts';

/**
 * How strongly spin pushes a ball across its path: l = ρ C_L A / (2 m) = k C_L / C_d. Backspin lifts, so it is positive;
 * topspin is negative. There is no table of C_L here: it depends on the spin and the ball's surface, and for most balls
 * in play nobody has published one.
 *
 * @param coefficient C_L as the user knows it, −2 to 2
 * @returns per metre of path
 * @throws DomainError 'input-out-of-range' for a ball without a drag coefficient
 * @source F_M = ρ C_L A v² / 2, at right angles to the path; C_L as entered
 */
export function liftFactor(ball: Ball, coefficient: Quantity<'1'>): Quantity<'/m'> {
  const { coefficient: drag, u, source } = ball.drag;
  const k = dragFactor(ball);
  return derive(
    {
      symbol: 'l',
      name: `Lift factor, ${ball.label}`,
      unit: '/m',
      formula: 'l = k C_L / C_d',
      variant: 'constant coefficient, spin that does not fade',
      source: { cite: 'F_M = ρ C_L A v^2 / 2 over m v^2', status: 'derived' },
    },
    { k, C_L: coefficient, C_d: measured('C_d', 'Drag coefficient', drag, '1', u, source) },
    (p) => (p.k * p.C_L) / p.C_d,
    // The drag factor was made from the same coefficient.
    { 'C_d|k': dragShare(ball, k) },
  );
}

/** How much of the relative uncertainty of k comes from C_d. */
function dragShare({ drag }: Ball, k: Quantity<'/m'>): number {
  if (k.u === null || k.u === 0 || k.value === 0) return 0;
  return Math.min(1, drag.u / drag.coefficient / (k.u / k.value));
}
