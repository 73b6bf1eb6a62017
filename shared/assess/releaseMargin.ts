import { DomainError } from '../errors.ts';
import { aimFor } from '../kernel/flight/aimFor.ts';
import { dragFactor } from '../kernel/flight/dragFactor.ts';
import { type Margin, marginForError } from '../kernel/flight/marginForError.ts';
import { NO_AIR } from '../kernel/flight/release.ts';
import { ballById, targetOf } from '../knowledge/balls/index.ts';
import type { MovementTrial } from '../model/trial.ts';
import { isKnown, type Unknown } from '../quantity.ts';
import type { Fact } from './assessment.ts';
import { readingOf } from './checkedFacts.ts';

/** How far off the release of a trial may be and still pass its target, the ball's own drag included; or what is missing. */
export function releaseMargin(trial: MovementTrial, facts: readonly Fact[]): Margin | Unknown {
  const ball = trial.ballId === null ? null : ballById(trial.ballId);
  if (ball === null) return { unknown: 'the ball is not chosen' };
  const { targetDistanceM, targetHeightM } = trial;
  if (targetDistanceM === null || targetHeightM === null)
    return { unknown: 'no target: its distance or its height is not entered' };
  const aim = aimFor(targetOf(ball), targetDistanceM, targetHeightM);
  if (aim === null) return { unknown: 'the program knows no target of this ball' };
  const own = facts.filter(({ from }) => from.id === trial.id);
  const speed = readingOf(own, 'ball.releaseSpeed', 'm/s');
  const angle = readingOf(own, 'ball.releaseAngle', 'rad');
  const height = readingOf(own, 'ball.releaseHeight', 'm');
  if (!isKnown(speed) || !isKnown(angle) || !isKnown(height))
    return { unknown: 'speed, angle or height of the release is not known' };
  try {
    const radius = (ball.diameterM[0] + ball.diameterM[1]) / 4;
    const why = 'entered without one';
    return marginForError(
      { speed, angle, height },
      aim,
      radius,
      { ...NO_AIR, drag: dragFactor(ball) },
      {
        distance: trial.targetDistanceUM ?? why,
        height: trial.targetHeightUM ?? why,
      },
    );
  } catch (thrown) {
    if (thrown instanceof DomainError) return { unknown: thrown.message };
    throw thrown;
  }
}
