import { standardGravity } from '../constants/standardGravity.ts';

/** Running trapezoidal integrals of the force itself; any body weight and any instant of rest can be put in later. */
export interface ForceIntegrals {
  readonly rateHz: number;
  /** ∫F dt from the first sample, N·s. */
  readonly first: Float64Array;
  /** ∫∫F dt dt, N·s². */
  readonly second: Float64Array;
}

/**
 * Running integrals of a vertical force record by the trapezoid rule.
 *
 * @param forceN N, all finite
 * @param rateHz samples a second, > 0
 * @returns N·s and N·s², cumulative, 0 at the first sample
 * @source trapezoid rule
 */
export function integrateForce(forceN: Float64Array, rateHz: number): ForceIntegrals {
  const first = new Float64Array(forceN.length);
  const second = new Float64Array(forceN.length);
  const half = 0.5 / rateHz;
  for (let k = 1; k < forceN.length; k++) {
    first[k] = (first[k - 1] as number) + half * ((forceN[k - 1] as number) + (forceN[k] as number));
    second[k] = (second[k - 1] as number) + half * ((first[k - 1] as number) + (first[k] as number));
  }
  return { rateHz, first, second };
}

export interface Motion {
  /** Vertical velocity of the centre of mass, m/s, at a time in s; up positive. */
  readonly velocity: (timeS: number) => number;
  /** Height of the centre of mass above its place at rest, m. */
  readonly position: (timeS: number) => number;
}

/**
 * Motion of the centre of mass from the force, if it is at rest at one instant: v = ∫(F − W) dt / m, x = ∫v dt, both
 * forward and backward from there. Dividing by m = W / g leaves only the weight to be known.
 *
 * @param weightN N, > 0
 * @param restS s, an instant at which the centre of mass is still
 */
export function motionFromRest(integrals: ForceIntegrals, weightN: number, restS: number): Motion {
  const perNewton = standardGravity.value / weightN;
  const first0 = between(integrals.first, restS * integrals.rateHz);
  const second0 = between(integrals.second, restS * integrals.rateHz);
  return {
    velocity: (timeS) =>
      perNewton * (between(integrals.first, timeS * integrals.rateHz) - first0 - weightN * (timeS - restS)),
    position: (timeS) => {
      const t = timeS - restS;
      const doubled = between(integrals.second, timeS * integrals.rateHz) - second0 - first0 * t;
      return perNewton * (doubled - (weightN * t * t) / 2);
    },
  };
}

/** Value at a place between two samples, on the straight line that joins them. */
function between(values: Float64Array, place: number): number {
  const k = Math.max(0, Math.min(values.length - 2, Math.floor(place + 1e-9)));
  const low = values[k] as number;
  return low + ((values[k + 1] as number) - low) * (place - k);
}
