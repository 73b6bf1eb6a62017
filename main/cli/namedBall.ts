import { DomainError } from '../../shared/errors.ts';
import { dragFactor } from '../../shared/kernel/flight/dragFactor.ts';
import { liftFactor } from '../../shared/kernel/flight/liftFactor.ts';
import type { Ball } from '../../shared/knowledge/balls/ball.ts';
import { ballById, BALLS } from '../../shared/knowledge/balls/index.ts';
import { measured, type Quantity } from '../../shared/quantity.ts';
import { choiceFrom, optionalNumber, UsageError } from './command.ts';

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

/** Lift by spin, where its coefficient is given: positive for backspin. */
export function liftOf(ball: Ball | null, option: string | boolean | undefined): Quantity<'/m'> | null {
  const coefficient = optionalNumber(option, '--lift');
  if (coefficient === null) return null;
  if (ball === null) throw new UsageError('--lift needs --ball, because lift depends on the ball.');
  if (Math.abs(coefficient) > 2) {
    throw new DomainError('input-out-of-range', `flight needs a lift coefficient from -2 to 2, got ${coefficient}`);
  }
  const source = { cite: 'As entered', status: 'convention' } as const;
  return liftFactor(ball, measured('C_L', 'Lift coefficient', coefficient, '1', 'it was given without one', source));
}

/** Drag is on where a ball is named, unless switched off. */
export function dragOf(ball: Ball | null, option: string | boolean | undefined): Quantity<'/m'> | null {
  const choice = choiceFrom(option, '--drag', ['on', 'off'], ball === null ? 'off' : 'on');
  if (choice === 'off') return null;
  if (ball === null) throw new UsageError('--drag on needs --ball, because drag depends on the ball.');
  return dragFactor(ball);
}
