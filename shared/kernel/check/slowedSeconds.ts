import type { CaseCheck } from '../../assess/assessment.ts';
import { isKnown, type Reading, type Source } from '../../quantity.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { cannotTell, fine, questioned } from './answer.ts';

/** Longer than anyone stays up, and higher than anyone rises, by their own legs. */
export const LONGEST_FLIGHT_S = 1;
export const GREATEST_RISE_M = 1.3;
const BAND = 0.1;

const SOURCE: Source = {
  cite: 'Free fall: 1.0 s in the air is a rise of 1.23 m. The limits 1.0 s and 1.3 m are a convention',
  status: 'convention',
};

/**
 * Were the seconds of a slowed clip taken as real? A flight of more than 1.0 s or a rise of more than 1.3 m is
 * impossible; a gravity found more than 10 % off says so even for a short one.
 *
 * @param seen what there is of flight time (s), rise of the centre of mass (m) and gravity found (m/s²); null: none
 * @source free fall; V18 of the gravity check
 */
export function slowedSeconds(seen: {
  readonly flightTimeS: number | null;
  readonly riseM: number | null;
  readonly gravityFound: Reading<'m/s2'> | null;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'slowed-seconds', about: seen.about, source: SOURCE };
  const { flightTimeS, riseM } = seen;
  if (flightTimeS !== null && flightTimeS > LONGEST_FLIGHT_S) {
    return questioned(
      base,
      `${flightTimeS.toFixed(2)} s in the air would be a jump of ${((standardGravity.value * flightTimeS ** 2) / 8).toFixed(1)} m. These look like the seconds of a slowed clip: divide by capture rate over playback rate.`,
      { label: 'Time in the air', value: flightTimeS, unit: 's' },
      { label: 'Longest possible', value: LONGEST_FLIGHT_S, unit: 's' },
    );
  }
  if (riseM !== null && riseM > GREATEST_RISE_M) {
    return questioned(
      base,
      `Nobody's centre of mass rises ${riseM.toFixed(2)} m in a jump. The seconds may be slowed, or the scale wrong.`,
      { label: 'Rise', value: riseM, unit: 'm' },
      { label: 'Greatest possible', value: GREATEST_RISE_M, unit: 'm' },
    );
  }
  const g = seen.gravityFound;
  if (g !== null && isKnown(g)) {
    if (g.value <= 0) return cannotTell(base, 'What flies here falls upwards: settle which way y points first.');
    const off = Math.abs(g.value - standardGravity.value);
    if (off - 2 * (g.u ?? 0) > BAND * standardGravity.value) {
      const factor = Math.sqrt(standardGravity.value / g.value);
      return questioned(
        base,
        factor > 1
          ? `Things fall with only ${g.value.toFixed(2)} m/s² here. If the scale is right, the seconds are slowed ${factor.toFixed(1)} times.`
          : `Things fall with ${g.value.toFixed(2)} m/s² here, more than gravity gives. If the scale is right, the capture rate entered is ${(1 / factor).toFixed(1)} times too high.`,
        { label: 'Gravity found', value: g.value, unit: 'm/s2' },
        { label: 'Gravity', value: standardGravity.value, unit: 'm/s2' },
      );
    }
    // Too uncertain to say either way: only a possible flight time or rise can still speak for the clock.
    if (off > BAND * standardGravity.value && flightTimeS === null && riseM === null) return cannotTell(base, NOTHING);
    if (off <= BAND * standardGravity.value) {
      return fine(base, 'The clip falls with gravity: its seconds are real.');
    }
  }
  if (flightTimeS === null && riseM === null) return cannotTell(base, NOTHING);
  return fine(base, 'Time in the air and rise are those of a person in real time.');
}

const NOTHING = 'There is no flight time, rise or free fall to compare with gravity.';
