import { dragFactor } from '../kernel/flight/dragFactor.ts';
import { type MovedRelease, movedRelease } from '../kernel/flight/movedRelease.ts';
import { NO_AIR } from '../kernel/flight/release.ts';
import { standardGravity } from '../kernel/constants/standardGravity.ts';
import { derive } from '../kernel/quantity/derive.ts';
import { bodyFlight } from '../kernel/trial/bodyFlight.ts';
import { readingOr } from '../kernel/trial/readingOr.ts';
import type { Scene } from '../kernel/trial/scene.ts';
import { trialTarget } from '../kernel/trial/trialTarget.ts';
import { ballById, targetOf } from '../knowledge/balls/index.ts';
import type { MovementTrial } from '../model/trial.ts';
import { isKnown, measured, type Quantity, type Unknown } from '../quantity.ts';
import type { Fact } from './assessment.ts';
import { releaseOf } from './releaseOf.ts';

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
  const target = trialTarget(trial);
  if ('unknown' in target) return { higher: target, later: target };
  const release = releaseOf(trial, facts);
  if ('unknown' in release) return { higher: release, later: release };
  const ball = trial.ballId === null ? null : ballById(trial.ballId);
  const aimedAt = targetOf(ball);
  const moved = (move: Parameters<typeof movedRelease>[3]) =>
    readingOr(() =>
      movedRelease(
        release,
        target.distance,
        target.height,
        move,
        { ...NO_AIR, drag: ball === null ? null : dragFactor(ball) },
        aimedAt === null ? target.height.value > release.height.value : aimedAt.shape.kind === 'ring',
      ),
    );
  const body = bodyAtRelease(view);
  return {
    higher: moved({ kind: 'higher', by: measured('Δy', 'Higher by', higherM, 'm', 0) }),
    later: 'unknown' in body ? body : moved({ kind: 'later', by: measured('δt', 'Later by', laterS, 's', 0), ...body }),
  };
}

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
