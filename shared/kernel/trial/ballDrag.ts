import { ballById } from '../../knowledge/balls/index.ts';
import type { MovementTrial } from '../../model/trial.ts';
import { dragFactor } from '../flight/dragFactor.ts';
import type { DragGiven } from '../flight/fitRelease.ts';

/**
 * How strongly air slows the ball of a trial, /m.
 * @returns null where no ball is named: nothing is taken off then
 * @source dragFactor
 */
export function ballDrag({ ballId }: Pick<MovementTrial, 'ballId'>): DragGiven | null {
  const ball = ballId === null ? null : ballById(ballId);
  if (ball === null) return null;
  const { value, u } = dragFactor(ball);
  return { k: value, u: u ?? 0 };
}
