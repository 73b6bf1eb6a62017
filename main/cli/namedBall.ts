import { dragFactor } from '../../shared/kernel/flight/dragFactor.ts';
import type { Ball } from '../../shared/knowledge/balls/ball.ts';
import { ballById, BALLS } from '../../shared/knowledge/balls/index.ts';
import type { Quantity } from '../../shared/quantity.ts';
import { choiceFrom, UsageError } from './command.ts';

/** A ball by its id, the usual one of a sport, or one of the user's own: `handball-3`, `handball`, `custom:0.45:0.19:0.5`. */
export function ballNamed(name: string | boolean | undefined): Ball | null {
  if (name === undefined) return null;
  const wanted = String(name).toLowerCase();
  const ball = BALLS.find(({ sport }) => sport.toLowerCase() === wanted) ?? ballById(wanted);
  if (ball === null) {
    throw new UsageError(
      `--ball needs one of ${BALLS.map(({ id }) => id).join(', ')}, or custom:MASS_KG:DIAMETER_M:DRAG_COEFFICIENT, got “${name}”.`,
    );
  }
  return ball;
}

/** Drag is on where a ball is named, unless switched off. */
export function dragOf(ball: Ball | null, option: string | boolean | undefined): Quantity<'/m'> | null {
  const choice = choiceFrom(option, '--drag', ['on', 'off'], ball === null ? 'off' : 'on');
  if (choice === 'off') return null;
  if (ball === null) throw new UsageError('--drag on needs --ball, because drag depends on the ball.');
  return dragFactor(ball);
}
