import { BALL } from '../../model/trial.ts';
import { isKnown, type Quantity, type Unknown } from '../../quantity.ts';
import { type FlightSample, LEAST_FLIGHT_FRAMES } from '../flight/fitRelease.ts';
import type { PointU } from '../plane/point.ts';
import type { Scene } from './scene.ts';

export interface FlightFrames {
  readonly samples: readonly FlightSample[];
  /** Release, or take-off. */
  readonly begin: Quantity<'s'>;
  /** Of one coordinate, m, or what to go by instead. */
  readonly pointU: PointU;
  /** The part of it that all samples have in common, m. */
  readonly sharedU: number;
}

/** A gap longer than this ends the flight: what follows may be a bounce. */
const LONGEST_BALL_GAP = 4;

/**
 * The frames in which something flies freely, s and m, not smoothed: the ball from its release to the first long gap, or
 * the body between take-off and landing (or release, where landing is not in the clip). The frames of take-off and
 * landing themselves are left out: the feet still push or already brake.
 *
 * @returns why there are too few, or the frames
 * @source conventions beside its constants
 */
export function flightFrames(view: Scene, of: 'ball' | 'body'): FlightFrames | Unknown {
  if (view.noMetres !== null) return { unknown: view.noMetres };
  return of === 'ball' ? ballFrames(view) : bodyFrames(view);
}

function ballFrames(view: Scene): FlightFrames | Unknown {
  const release = view.eventAt('release');
  if (!isKnown(release)) return release;
  const path = view.points.get(BALL)?.seen;
  if (path === undefined) return { unknown: 'the ball is not digitised' };
  const after = [...path]
    .filter(([frame]) => frame / view.rateHz > release.value + 0.25 / view.rateHz)
    .toSorted(([a], [b]) => a - b);
  const end = after.findIndex(
    ([frame], i) => i > 0 && frame - (after[i - 1] as (typeof after)[number])[0] > LONGEST_BALL_GAP,
  );
  const flight = end === -1 ? after : after.slice(0, end);
  if (flight.length < LEAST_FLIGHT_FRAMES) {
    return { unknown: `ball not digitised for ${LEAST_FLIGHT_FRAMES} frames after release, only ${flight.length}` };
  }
  return {
    begin: release,
    samples: flight.map(([frame, { x, y }]) => ({ t: frame / view.rateHz, x, y })),
    pointU: view.ball.pointU,
    sharedU: sharedU(
      view,
      flight.map(([frame]) => frame),
    ),
  };
}

/**
 * Where the ball was tracked through its whole flight from one place put down by hand, the error of that place is in all of
 * them: it shifts the path and bends nothing. Where a person put it right on the way, every error counts as its own.
 */
function sharedU({ ball: { pointU, trackedU } }: Scene, frames: readonly number[]): number {
  const own = frames.flatMap((frame) => trackedU.get(frame) ?? []);
  if (typeof pointU !== 'number' || own.length < frames.length - 1) return 0;
  return Math.sqrt(Math.max(0, pointU ** 2 - Math.hypot(...own) ** 2 / own.length));
}

function bodyFrames(view: Scene): FlightFrames | Unknown {
  if (view.body.unknown !== null) return { unknown: view.body.unknown };
  const takeoff = view.eventAt('take-off');
  if (!isKnown(takeoff)) return takeoff;
  const end = ['landing', 'release', 'apex'].map(view.eventAt).find((time) => isKnown(time));
  if (end === undefined || !isKnown(end))
    return { unknown: 'no landing event, nor any other that says the body is in the air' };
  const margin = 0.75 / view.rateHz;
  const samples = [...view.body.seen]
    .map(([frame, { x, y }]) => ({ t: frame / view.rateHz, x, y }))
    .filter(({ t }) => t > takeoff.value + margin && t < end.value - margin)
    .toSorted((a, b) => a.t - b.t);
  if (samples.length < LEAST_FLIGHT_FRAMES) {
    return {
      unknown: `the body is digitised in ${samples.length} frames of flight; ${LEAST_FLIGHT_FRAMES} are needed`,
    };
  }
  // Errors of the points average out in a centre of mass, so its own scatter says how exact it is.
  return { begin: takeoff, samples, pointU: 'its scatter about the fitted flight is used', sharedU: 0 };
}
