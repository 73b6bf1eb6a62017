import { DomainError } from '../../errors.ts';
import type { Flight } from './findFlights.ts';
import type { ForceTrace } from './forceTrace.ts';

/**
 * Puts take-off and landing where a person placed them. They belong to the flight whose middle is nearest to them; an
 * onset alone belongs to the first flight after it.
 *
 * @param flights as found, at least one
 * @param samples length of the record
 * @returns the flights, and which of them has marks; -1 where there are none
 * @throws DomainError 'input-out-of-range' for marks outside of the record or out of order
 * @source convention
 */
export function placeMarks(
  flights: readonly Flight[],
  { marks = null, rateHz }: ForceTrace,
  samples: number,
): { readonly flights: readonly Flight[]; readonly marked: number } {
  if (marks === null) return { flights, marked: -1 };
  const { onsetS, takeoffS, landingS } = marks;
  const sample = (timeS: number | null) => (timeS === null ? null : Math.round(timeS * rateHz));
  const near = sample(takeoffS ?? landingS);
  const after = sample(onsetS);
  const off = ({ takeoff, landing }: Flight) => Math.abs((takeoff + landing) / 2 - (near ?? 0));
  const nearest =
    near === null
      ? flights.findIndex(({ takeoff }) => takeoff > (after ?? -1))
      : flights.reduce((best, flight, i) => (off(flight) < off(flights[best] as Flight) ? i : best), 0);
  const found = flights[nearest];
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
  return { flights: flights.with(nearest, { ...found, takeoff, landing }), marked: nearest };
}
