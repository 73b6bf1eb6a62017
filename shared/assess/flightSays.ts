import { DomainError } from '../errors.ts';
import { type GravityCheck, gravityCheck } from '../kernel/flight/gravityCheck.ts';
import { ballDrag } from '../kernel/trial/ballDrag.ts';
import type { CaseFile } from '../model/records.ts';
import type { MovementTrial } from '../model/trial.ts';
import { isKnown, type Unknown } from '../quantity.ts';
import { trialFlight, type TrialFlight } from './trialFlight.ts';

export interface FlightSays {
  readonly of: TrialFlight['of'];
  readonly check: GravityCheck;
}

/** Rates cameras are usually set to, Hz. A convention: what is found close to one of them is taken for it. */
const USUAL_RATES_HZ = [24, 25, 30, 48, 50, 60, 90, 100, 120, 200, 240, 250, 300, 400, 480, 500, 600, 960, 1000];

/** What the free flight of the ball, else of the body, says about clock and scale; or why nothing flies. */
export function flightSays(file: CaseFile, trial: MovementTrial): FlightSays | Unknown {
  const flight = trialFlight(file, trial);
  if ('unknown' in flight) return flight;
  const { of, view, samples, pointU, sharedU } = flight;
  const [drag, { scaleU }] = of === 'ball' ? [ballDrag(trial), view.ball] : [null, view];
  try {
    return { of, check: gravityCheck(samples, pointU, drag, { scaleU, sharedU }) };
  } catch (thrown) {
    if (thrown instanceof DomainError) return { unknown: thrown.message };
    throw thrown;
  }
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
