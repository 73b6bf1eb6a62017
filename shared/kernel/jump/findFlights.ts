import { DomainError } from '../../errors.ts';

/** One flight in a force record. Sample numbers from 0. */
export interface Flight {
  /** First sample below the threshold. */
  readonly takeoff: number;
  /** First sample back at or above it. */
  readonly landing: number;
  readonly thresholdN: number;
  /** What the plate reads with nobody on it. */
  readonly unloadedMeanN: number;
  readonly unloadedSdN: number;
}

/** A person on the plate weighs more than this; anything less is an empty plate or a wrong unit. Convention. */
const LOADED_N = 50;
/** Flights outside these lengths are steps on and off the plate, or noise. Convention. */
const FLIGHT_S = [0.15, 0.9] as const;
/** Take-off threshold where the unloaded plate is quiet. Convention. */
const THRESHOLD_N = 20;

/**
 * Typical force with somebody on the plate: the median of all loaded samples, N.
 * @throws DomainError 'not-enough-data' if nobody is on the plate in any sample
 */
export function loadedLevel(forceN: Float64Array): number {
  const loaded = forceN.filter((force) => force > LOADED_N).toSorted();
  const median = loaded[loaded.length >> 1];
  if (median !== undefined) return median;
  const largest = forceN.reduce((most, force) => (Math.abs(force) > Math.abs(most) ? force : most), 0);
  throw new DomainError(
    'not-enough-data',
    `analyseForceTrace needs somebody on the plate, upward force positive, in newtons: no reading exceeds ${LOADED_N} N, the largest in size is ${largest.toFixed(1)}`,
  );
}

/**
 * All flights in a vertical force record: stretches of 0.15 to 0.9 s with an unloaded plate and contact on both sides.
 * The threshold is the unloaded plate's own mean + 5 SD, taken from the middle half of the flight, and never below 20 N:
 * a threshold under the noise breaks a flight up.
 *
 * @param forceN sum of all plates, N, up positive, finite
 * @param rateHz samples a second
 * @param levelN typical force with somebody on the plate (loadedLevel)
 * @returns flights in order; empty where there are none
 * @throws nothing itself: loadedLevel has refused an empty plate
 * @source threshold: mean + 5 SD, at least 20 N; 0.15 to 0.9 s: conventions
 */
export function findFlights(forceN: Float64Array, rateHz: number, levelN: number): Flight[] {
  const rough = levelN / 10;
  const flights: Flight[] = [];
  let start = -1;
  for (let k = 0; k < forceN.length; k++) {
    const isUnloaded = (forceN[k] as number) < rough;
    if (isUnloaded && start < 0) start = k;
    if (isUnloaded || start < 0) continue;
    // A run that begins with the record is a plate nobody has stepped on yet.
    if (start > 0) {
      const flight = refine(forceN, start, k);
      const seconds = (flight.landing - flight.takeoff) / rateHz;
      if (seconds >= FLIGHT_S[0] && seconds <= FLIGHT_S[1]) flights.push(flight);
    }
    start = -1;
  }
  return flights;
}

function refine(forceN: Float64Array, start: number, end: number): Flight {
  const quarter = Math.floor((end - start) / 4);
  const middle = forceN.subarray(start + quarter, Math.max(end - quarter, start + quarter + 1));
  const mean = middle.reduce((sum, force) => sum + force, 0) / middle.length;
  const sd = Math.sqrt(middle.reduce((sum, force) => sum + (force - mean) ** 2, 0) / Math.max(1, middle.length - 1));
  const thresholdN = Math.max(THRESHOLD_N, mean + 5 * sd);
  let takeoff = (start + end) >> 1;
  let landing = takeoff;
  while (takeoff > 0 && (forceN[takeoff - 1] as number) < thresholdN) takeoff--;
  while (landing < forceN.length && (forceN[landing] as number) < thresholdN) landing++;
  return { takeoff, landing, thresholdN, unloadedMeanN: mean, unloadedSdN: sd };
}
