import type { FlightSample } from '../kernel/flight/fitRelease.ts';
import { type GravityCheck, gravityCheck } from '../kernel/flight/gravityCheck.ts';
import { tiltFromFlight } from '../kernel/flight/tiltFromFlight.ts';
import { ballDrag } from '../kernel/trial/ballDrag.ts';
import { flightFrames } from '../kernel/trial/flightFrames.ts';
import { readingOr } from '../kernel/trial/readingOr.ts';
import { scene } from '../kernel/trial/scene.ts';
import type { CaseFile } from '../model/records.ts';
import { BALL, type Calibration, type MovementTrial } from '../model/trial.ts';
import { isKnown, type Reading, type Unknown } from '../quantity.ts';
import { DomainError } from '../errors.ts';
import { movementOf } from './movementOf.ts';

export interface FlightSays {
  readonly of: 'ball' | 'body';
  readonly check: GravityCheck;
  /** What the picture's down is turned by if free fall points truly down; or why this flight does not tell. */
  readonly tilt: Reading<'rad'>;
}

/** Rates cameras are usually set to, Hz. A convention: what is found close to one of them is taken for it. */
const USUAL_RATES_HZ = [24, 25, 30, 48, 50, 60, 90, 100, 120, 200, 240, 250, 300, 400, 480, 500, 600, 960, 1000];

/** What the free flight of the ball, else of the body, says about clock, scale and vertical; or why nothing flies. */
export function flightSays(file: CaseFile, trial: MovementTrial): FlightSays | Unknown {
  const movement = movementOf(file, trial.movementId);
  if (movement === null) return { unknown: 'this version does not know the movement' };
  const tracks = file.landmarkTracks.filter((track) => track.trialId === trial.id);
  const events = file.trialEvents.filter((event) => event.trialId === trial.id);
  const { massKg, statureM, referenceSex } = file.athlete;
  const input = { tracks, events, movement, massKg, statureM, referenceSex };
  const view = scene({ ...input, trial });
  const level = scene({ ...input, trial: { ...trial, calibration: untilted(trial.calibration) } });
  if ('unknown' in view) return view;
  if ('unknown' in level) return level;
  const of = tracks.some(({ point }) => point === BALL) ? 'ball' : 'body';
  const [flight, unturned] = [flightFrames(view, of), flightFrames(level, of)];
  if ('unknown' in flight) return flight;
  if ('unknown' in unturned) return unturned;
  try {
    // Errors of the points average out in a centre of mass, so its own scatter says how exact it is.
    const check =
      of === 'ball'
        ? gravityCheck(flight.samples, view.ball.pointU, view.ball.scaleU, ballDrag(trial))
        : gravityCheck(flight.samples, 'its scatter about the fitted flight is used', view.scaleU);
    return { of, check, tilt: tiltSaid(of, unturned.samples, trial) };
  } catch (thrown) {
    if (thrown instanceof DomainError) return { unknown: thrown.message };
    throw thrown;
  }
}

/** A tilt known worse than this is better taken from a plumb line: a convention. */
const COARSEST_TILT_U = (2 * Math.PI) / 180;

function tiltSaid(of: FlightSays['of'], samples: readonly FlightSample[], trial: MovementTrial): Reading<'rad'> {
  const drag = of === 'ball' ? ballDrag(trial) : null;
  if (of === 'ball' && drag === null) return { unknown: 'air turns a ball’s path too, and no ball is named' };
  const tilt = readingOr(() => tiltFromFlight(samples, drag));
  if (!isKnown(tilt) || (tilt.u ?? 0) <= COARSEST_TILT_U) return tilt;
  return { unknown: `this flight tells it only to ± ${((2 * (tilt.u ?? 0) * 180) / Math.PI).toFixed(0)}°` };
}

function untilted(calibration: Calibration | null): Calibration | null {
  return calibration === null || calibration.kind === 'metres' ? calibration : { ...calibration, tiltDeg: 0 };
}

export interface RateProposal {
  readonly rateHz: number;
  /** How many times faster than entered. */
  readonly factor: number;
  /** Why this rate and not one beside it. */
  readonly because: string;
}

/**
 * The capture rate that would make what flies fall with g, if the scale is right. Within two standard uncertainties a
 * usual camera rate that is a whole multiple of the present one is taken, else either, because cameras have such rates; null
 * where gravity
 * does not question the clock.
 */
export function proposedRate(trial: MovementTrial, { check }: FlightSays): RateProposal | null {
  const { captureRateHz } = trial;
  const { slowMotionFactor: k } = check;
  if (captureRateHz === null || !isKnown(k)) return null;
  const found = captureRateHz * k.value;
  const wholes = Array.from({ length: 40 }, (_, i) => captureRateHz * (i + 2));
  const reach = 2 * captureRateHz * (k.u ?? 0);
  const inReach = [...wholes, ...USUAL_RATES_HZ]
    .filter((rate) => rate !== captureRateHz && Math.abs(rate - found) <= reach)
    .toSorted((a, b) => Math.abs(a - found) - Math.abs(b - found));
  const nearest = inReach.find((rate) => wholes.includes(rate) && USUAL_RATES_HZ.includes(rate)) ?? inReach[0];
  const rateHz = nearest ?? Number(found.toPrecision(4));
  return {
    rateHz,
    factor: rateHz / captureRateHz,
    because:
      nearest === undefined
        ? 'as computed; no usual rate of a camera lies close enough'
        : USUAL_RATES_HZ.includes(nearest)
          ? `the usual camera rate closest to the ${found.toFixed(1)} Hz computed`
          : `a whole multiple of the present rate, closest to the ${found.toFixed(1)} Hz computed`,
  };
}
