import { ballById } from '../../knowledge/balls/index.ts';
import type { MovementTrial } from '../../model/trial.ts';
import { isKnown, measured, type Quantity, type Reading, type Unknown } from '../../quantity.ts';
import { dragFactor } from '../flight/dragFactor.ts';
import { fitRelease, type ReleaseFit } from '../flight/fitRelease.ts';
import { forwardFlight } from '../flight/forwardFlight.ts';
import { leastSpeed } from '../flight/leastSpeed.ts';
import { leastSpeedAngle } from '../flight/leastSpeedAngle.ts';
import { derive } from '../quantity/derive.ts';
import { ballDrag } from './ballDrag.ts';
import { flightFrames } from './flightFrames.ts';
import { readingOr } from './readingOr.ts';
import { scaleOf, type Scene } from './scene.ts';
import { trialTarget } from './trialTarget.ts';

/** Everything a ball's flight says about its release, by measure id. */
export const BALL_MEASURES = [
  'ball.releaseSpeed',
  'ball.releaseAngle',
  'ball.releaseHeight',
  'ball.entryAngle',
  'ball.leastSpeed',
  'ball.leastSpeedAngle',
  'ball.angleAboveLeastSpeed',
  'ball.gravityFound',
] as const;
export type BallMeasure = (typeof BALL_MEASURES)[number];

const DEFINITION = { cite: 'Definition', status: 'derived' } as const;

/**
 * Release from the ball's path after it left the hand, with the ball's own drag and standard gravity; and the gravity
 * that the path itself shows. What cannot be said is Unknown with the reason.
 * @param floor height of the floor in the plane's coordinates
 * @source free flight; the fits' own
 */
export function ballMeasures(
  view: Scene,
  trial: MovementTrial,
  floor: Reading<'m'>,
): { readonly readings: Readonly<Record<BallMeasure, Reading>>; readonly warnings: readonly string[] } {
  const fit = flightFit(view, trial);
  if ('unknown' in fit) {
    return {
      readings: Object.fromEntries(BALL_MEASURES.map((id) => [id, fit])) as Record<BallMeasure, Unknown>,
      warnings: [],
    };
  }
  const { releaseSpeed: speed, releaseAngle: angle } = fit;
  const height: Reading<'m'> = isKnown(floor)
    ? derive(
        {
          symbol: 'y_r',
          name: 'Release height',
          unit: 'm',
          formula: 'y_r = s (y_ball - y_floor)',
          variant: "of the ball's centre above the floor; s: scale of the calibration, 1",
          source: DEFINITION,
        },
        { y_ball: fit.y, y_floor: floor, s: scaleOf(view.ball) },
        (p) => p.s * (p.y_ball - p.y_floor),
      )
    : floor;
  const aim = aimOf(trial, height);
  const leastAngle: Reading<'rad'> = 'unknown' in aim ? aim : leastSpeedAngle(aim.distance, aim.rise);
  return {
    readings: {
      'ball.releaseSpeed': speed,
      'ball.releaseAngle': angle,
      'ball.releaseHeight': height,
      'ball.entryAngle': 'unknown' in aim ? aim : entry(view, trial, fit, aim),
      'ball.leastSpeed': 'unknown' in aim ? aim : leastSpeed(aim.distance, aim.rise),
      'ball.leastSpeedAngle': leastAngle,
      'ball.angleAboveLeastSpeed': isKnown(leastAngle)
        ? derive(
            {
              symbol: 'Δθ',
              name: 'Release angle above the least-speed angle',
              unit: 'rad',
              formula: 'Δθ = θ - θ_min',
              source: DEFINITION,
            },
            { θ: angle, θ_min: leastAngle },
            (p) => p.θ - p.θ_min,
          )
        : leastAngle,
      'ball.gravityFound': fit.gravity,
    },
    warnings: fit.verdict === 'questioned' ? [`Gravity check: ${fit.reasons.join('; ')}.`] : [],
  };
}

function flightFit(view: Scene, trial: MovementTrial): ReleaseFit | Unknown {
  const flight = flightFrames(view, 'ball');
  if ('unknown' in flight) return flight;
  const { samples, begin, pointU, sharedU } = flight;
  return readingOr(() =>
    fitRelease(
      samples.map(({ t, x, y }) => ({ t, x: view.facing * x, y })),
      pointU,
      ballDrag(trial),
      { releaseAt: { t: begin.value, u: begin.u ?? 0 }, scaleU: view.ball.scaleU, sharedU, gravity: 'standard' },
    ),
  );
}

interface Target {
  readonly distance: Quantity<'m'>;
  readonly rise: Quantity<'m'>;
}

function aimOf(trial: MovementTrial, height: Reading<'m'>): Target | Unknown {
  if (!isKnown(height)) return height;
  const target = trialTarget(trial);
  if ('unknown' in target) return target;
  return {
    distance: target.distance,
    rise: derive(
      { symbol: 'Δh', name: 'Target above release', unit: 'm', formula: 'Δh = y_t - y_r', source: DEFINITION },
      { y_t: target.height, y_r: height },
      (p) => p.y_t - p.y_r,
    ),
  };
}

function entry(view: Scene, trial: MovementTrial, fit: ReleaseFit, aim: Target): Reading<'rad'> {
  const ball = trial.ballId === null ? null : ballById(trial.ballId);
  // Heights only matter relative to release here.
  const level = measured('y_0', 'Release height, as zero', 0, 'm', 0);
  const arrival = readingOr(() =>
    forwardFlight(
      { speed: fit.releaseSpeed, angle: fit.releaseAngle, height: level, correlation: fit.correlation },
      { drag: ball === null ? null : dragFactor(ball), lift: null },
    ).passing(aim.distance),
  );
  return 'unknown' in arrival ? arrival : arrival.entryAngle;
}
