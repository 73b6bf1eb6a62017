import { dragFactor } from '../kernel/flight/dragFactor.ts';
import { type MovedRelease, movedRelease } from '../kernel/flight/movedRelease.ts';
import { NO_AIR } from '../kernel/flight/release.ts';
import { standardGravity } from '../kernel/constants/standardGravity.ts';
import { derive } from '../kernel/quantity/derive.ts';
import { bodyFlight } from '../kernel/trial/bodyFlight.ts';
import { readingOr } from '../kernel/trial/readingOr.ts';
import type { Scene } from '../kernel/trial/scene.ts';
import { ballById, targetOf } from '../knowledge/balls/index.ts';
import type { MovementTrial } from '../model/trial.ts';
import { isKnown, measured, type Quantity, type Unknown } from '../quantity.ts';
import type { Fact } from './assessment.ts';
import { readingOf } from './checkedFacts.ts';

/** What a coach may want to change alone: the height of release, m, or its instant, s. */
export interface Elsewhere {
  readonly higherM: number;
  readonly laterS: number;
}

/**
 * The releases that would reach the same target from a little higher, and from a little later in the same jump; or what
 * is missing to say so.
 *
 * @source movedRelease; the body's velocity at release by constant acceleration from take-off
 */
export function releaseElsewhere(
  trial: MovementTrial,
  facts: readonly Fact[],
  view: Scene,
  { higherM, laterS }: Elsewhere,
): { readonly higher: MovedRelease | Unknown; readonly later: MovedRelease | Unknown } {
  const { targetDistanceM, targetHeightM, ballId } = trial;
  if (targetDistanceM === null || targetHeightM === null)
    return missing('no target: its distance or its height is not entered');
  const own = facts.filter(({ from }) => from.id === trial.id);
  const speed = readingOf(own, 'ball.releaseSpeed', 'm/s');
  const angle = readingOf(own, 'ball.releaseAngle', 'rad');
  const height = readingOf(own, 'ball.releaseHeight', 'm');
  if (!isKnown(speed) || !isKnown(angle) || !isKnown(height))
    return missing('speed, angle or height of the release is not known');
  const why = 'entered without one';
  const ball = ballId === null ? null : ballById(ballId);
  const target = targetOf(ball);
  const moved = (move: Parameters<typeof movedRelease>[3]) =>
    readingOr(() =>
      movedRelease(
        { speed, angle, height },
        measured('d', 'Distance to the target', targetDistanceM, 'm', trial.targetDistanceUM ?? why),
        measured('y_t', 'Height of the target', targetHeightM, 'm', trial.targetHeightUM ?? why),
        move,
        { ...NO_AIR, drag: ball === null ? null : dragFactor(ball) },
        target === null ? targetHeightM > height.value : target.shape.kind === 'ring',
      ),
    );
  const body = bodyAtRelease(view);
  return {
    higher: moved({ kind: 'higher', by: measured('Δy', 'Higher by', higherM, 'm', 0) }),
    later: 'unknown' in body ? body : moved({ kind: 'later', by: measured('δt', 'Later by', laterS, 's', 0), ...body }),
  };
}

const missing = (unknown: string) => ({ higher: { unknown }, later: { unknown } });

/** How the body moves in the air when the ball leaves it. */
function bodyAtRelease(view: Scene): { bodyUp: Quantity<'m/s'>; bodyForward: Quantity<'m/s'> } | Unknown {
  const flight = bodyFlight(view);
  if ('unknown' in flight) return flight;
  const [takeoff, release] = [view.eventAt('take-off'), view.eventAt('release')];
  if (!isKnown(takeoff)) return takeoff;
  if (!isKnown(release)) return release;
  if (release.value < takeoff.value)
    return { unknown: 'the ball is released on the ground, where the body does not fly' };
  return {
    bodyUp: derive(
      {
        symbol: 'v_b',
        name: 'Body upwards at release',
        unit: 'm/s',
        formula: 'v_b = v_y - g (t_r - t_0)',
        source: { cite: 'Constant acceleration from take-off', status: 'derived' },
      },
      { v_y: flight.verticalVelocity, t_r: release, t_0: takeoff, g: standardGravity },
      ({ v_y, t_r, t_0, g }) => v_y - g * (t_r - t_0),
    ),
    bodyForward: flight.horizontalVelocity,
  };
}
