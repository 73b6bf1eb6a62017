import { DomainError } from '../../errors.ts';
import type { Flight } from './findFlights.ts';
import type { ForceMarks, ForceTrace } from './forceTrace.ts';

/**
 * Puts take-offs and landings where a person placed them. They belong to the flight whose middle is nearest to them; an
 * onset alone belongs to the first flight after it.
 *
 * @param flights as found, at least one
 * @param samples length of the record
 * @returns the flights, and the marks of each; null for a flight without
 * @throws DomainError 'input-out-of-range' for marks outside of the record or out of order
 * @source convention
 */
export function placeMarks(
  flights: readonly Flight[],
  { marks = [], rateHz }: ForceTrace,
  samples: number,
): { readonly flights: readonly Flight[]; readonly marksOf: readonly (ForceMarks | null)[] } {
  const placed = flights.slice();
  const marksOf = flights.map((): ForceMarks | null => null);
  for (const one of marks) {
    const { index, flight } = placeOne(flights, one, rateHz, samples);
    placed[index] = flight;
    marksOf[index] = one;
  }
  return { flights: placed, marksOf };
}

function placeOne(
  flights: readonly Flight[],
  { onsetS, takeoffS, landingS }: ForceMarks,
  rateHz: number,
  samples: number,
): { readonly index: number; readonly flight: Flight } {
  const sample = (timeS: number | null) => (timeS === null ? null : Math.round(timeS * rateHz));
  const near = sample(takeoffS ?? landingS);
  const after = sample(onsetS);
  const off = ({ takeoff, landing }: Flight) => Math.abs((takeoff + landing) / 2 - (near ?? 0));
  const index =
    near === null
      ? flights.findIndex(({ takeoff }) => takeoff > (after ?? -1))
      : flights.reduce((best, flight, i) => (off(flight) < off(flights[best] as Flight) ? i : best), 0);
  const found = flights[index];
  const takeoff = sample(takeoffS) ?? found?.takeoff ?? 0;
  const landing = sample(landingS) ?? found?.landing ?? 0;
  const isInOrder = (after ?? 0) >= 0 && (after ?? 0) < takeoff && takeoff < landing && landing < samples;
  if (found === undefined || !isInOrder) {
    throw new DomainError(
      'input-out-of-range',
      `analyseForceTrace needs onset, take-off and landing in this order and inside of the record of ${(samples / rateHz).toFixed(3)} s, got ${onsetS ?? 'found'}, ${takeoff / rateHz} and ${landing / rateHz} s`,
      'marks',
    );
  }
  return { index, flight: { ...found, takeoff, landing } };
}
