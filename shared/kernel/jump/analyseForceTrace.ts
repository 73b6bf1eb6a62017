import { DomainError } from '../../errors.ts';
import { findFlights, type Flight, loadedLevel } from './findFlights.ts';
import { forceJump } from './forceJump.ts';
import type { ForceJump, ForceTrace, ForceTraceAnalysis } from './forceTrace.ts';
import { integrateForce } from './integrateForce.ts';
import { placeMarks } from './placeMarks.ts';
import { quietWindow } from './quietWindow.ts';

/** Landing and stepping off shake the plate; a stance is looked for only this far from both. Convention. */
const SETTLING_S = 0.3;

/** Outside of these the forces are in another unit: 70 kg in kilogram-force read as newtons are 7 kg. Convention. */
const LIGHTEST_KG = 15;
const HEAVIEST_KG = 400;

/**
 * Analyses the vertical ground force of countermovement, squat or drop jumps; every jump in the record is found.
 *
 * Method: body weight is the mean of the quietest stance; take-off and landing lie where the summed force crosses the
 * unloaded plate's mean + 5 SD, at least 20 N; onset is where the force leaves body weight by 5 SD for 30 ms, less
 * 30 ms; velocity and place follow by the trapezoid rule, forward from the onset, or, for squat and drop jumps with a
 * still stance at the end, backward from there. Force is not filtered and no offset is taken off.
 *
 * An instant in `marks` stands where a person placed it, in the jump it lies nearest to; it has no uncertainty.
 *
 * Uncertainty: of body weight, the spread of ten part-means of the stance and the plate's reading in flight as the
 * half-width of a rectangle; of take-off and landing, one sample either way; of the onset, 30 ms either way. The plate's
 * calibration is not included. Where nobody stood still there is none, and the reason is given.
 *
 * @throws DomainError 'input-malformed' for plates of unlike length, 'input-out-of-range' for a value, rate or mass that
 *   cannot be used, 'not-enough-data' where no jump is found, 'unit-mismatch' where the stance weighs no person
 * @source Owen et al. 2014; take-off velocity by impulse as in Linthorne 2001, Am J Phys 69(11):1198-1204
 */
export function analyseForceTrace(trace: ForceTrace): ForceTraceAnalysis {
  const forceN = sumOfPlates(trace);
  const { rateHz } = trace;
  const levelN = loadedLevel(forceN);
  const found = findFlights(forceN, rateHz, levelN);
  if (found.length === 0) {
    throw new DomainError(
      'not-enough-data',
      'analyseForceTrace needs at least one flight of 0.15 to 0.9 s with contact before and after it, found none',
    );
  }
  const { flights, marksOf } = placeMarks(found, trace, forceN.length);
  const settling = Math.round(SETTLING_S * rateHz);
  const landed = (flight: Flight | undefined) => (flight ? flight.landing + settling : 0);
  const stances = flights.map((flight, i) => {
    const next = flights[i + 1]?.takeoff ?? forceN.length + settling;
    return {
      before: quietWindow(forceN, rateHz, landed(flights[i - 1]), flight.takeoff - settling, levelN),
      after: quietWindow(forceN, rateHz, landed(flight), next - settling, levelN),
    };
  });
  const calmest =
    stances
      .flatMap(({ before, after }) => [before, after])
      .filter((window) => window?.isStill)
      .toSorted((a, b) => (a?.meanUN ?? 0) - (b?.meanUN ?? 0))[0] ?? null;

  const airborne = forceN.slice();
  for (const { takeoff, landing } of flights) airborne.fill(0, takeoff, landing);
  const integrals = integrateForce(airborne, rateHz);

  const jumps: ForceJump[] = [];
  const leftOut: string[] = [];
  flights.forEach((flight, i) => {
    const { before, after } = stances[i] as (typeof stances)[number];
    const isBackward = trace.kind !== 'countermovement' && i === flights.length - 1 && after?.isStill === true;
    const rest = isBackward ? after : before;
    const jump =
      rest &&
      forceJump({
        trace,
        forceN,
        integrals,
        flight,
        marks: marksOf[i] ?? null,
        before,
        after,
        rest,
        isBackward,
        calmest,
      });
    if (jump) jumps.push(jump);
    else {
      const at = (flight.takeoff / rateHz).toFixed(2);
      leftOut.push(`The flight at ${at} s is left out: nobody stands on the plate long enough to weigh and integrate.`);
    }
  });
  const best =
    jumps.toSorted(
      (a, b) =>
        Number(b.isImpulseSound) - Number(a.isImpulseSound) ||
        b.jumpHeightFlightTime.value - a.jumpHeightFlightTime.value,
    )[0] ?? null;
  if (!best)
    throw new DomainError('not-enough-data', `analyseForceTrace needs a stance to weigh. ${leftOut.join(' ')}`);
  const { mass } = best;
  if (mass.value < LIGHTEST_KG || mass.value > HEAVIEST_KG) {
    throw new DomainError(
      'unit-mismatch',
      `analyseForceTrace needs the forces under a person in newtons; the stance weighs ${mass.value.toPrecision(3)} kg. ` +
        'Look at the unit of the force columns',
    );
  }
  return { ...best, warnings: [...best.warnings, ...leftOut], jumps };
}

function sumOfPlates({ rateHz, plates, massKg }: ForceTrace): Float64Array {
  if (!(Number.isFinite(rateHz) && rateHz > 0)) {
    throw new DomainError('input-out-of-range', `analyseForceTrace needs a sampling rate above 0 Hz, got ${rateHz}`);
  }
  if (massKg !== null && !(Number.isFinite(massKg) && massKg > 0)) {
    throw new DomainError('input-out-of-range', `analyseForceTrace needs a mass above 0 kg or none, got ${massKg}`);
  }
  const length = plates[0]?.length ?? 0;
  if (length < 2) {
    throw new DomainError('not-enough-data', `analyseForceTrace needs at least two samples of force, got ${length}`);
  }
  const sum = new Float64Array(length);
  plates.forEach((plate, p) => {
    if (plate.length !== length) {
      throw new DomainError(
        'input-malformed',
        `analyseForceTrace needs plates of one length, got ${length} and ${plate.length} samples`,
        `plates.${p}`,
      );
    }
    for (let k = 0; k < length; k++) {
      const force = plate[k] as number;
      if (!Number.isFinite(force)) {
        throw new DomainError(
          'input-out-of-range',
          `analyseForceTrace needs finite forces, got ${force} at sample ${k}`,
          `plates.${p}.${k}`,
        );
      }
      sum[k] = (sum[k] as number) + force;
    }
  });
  return sum;
}
