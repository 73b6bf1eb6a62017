import type { Release } from '../kernel/flight/release.ts';
import type { MovementTrial } from '../model/trial.ts';
import { isKnown, type Unknown } from '../quantity.ts';
import type { Fact } from './assessment.ts';
import { readingOf } from './checkedFacts.ts';

/** How the ball of a trial sets off, among the facts of its case; unknown where one of the three is. */
export function releaseOf(trial: MovementTrial, facts: readonly Fact[]): Release | Unknown {
  const own = facts.filter(({ from }) => from.id === trial.id);
  const speed = readingOf(own, 'ball.releaseSpeed', 'm/s');
  const angle = readingOf(own, 'ball.releaseAngle', 'rad');
  const height = readingOf(own, 'ball.releaseHeight', 'm');
  if (!isKnown(speed) || !isKnown(angle) || !isKnown(height))
    return { unknown: 'speed, angle or height of the release is not known' };
  return { speed, angle, height };
}
