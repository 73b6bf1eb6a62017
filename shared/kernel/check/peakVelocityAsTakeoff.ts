import type { CaseCheck } from '../../assess/assessment.ts';
import { isKnown, type Reading, type Source } from '../../quantity.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { cannotTell, fine, inPercent, isNear, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'Velocity peaks before last contact, when force has fallen back to body weight. Widths are a convention',
  status: 'derived',
};

/** Velocities this close are the same one. */
const SAME = 0.02;
/** The peak lies above take-off by no more than about this share. */
const MOST_ABOVE = 0.15;

/**
 * Mistake 7: was the highest velocity taken for that of take-off? It comes a little earlier and is higher, and the
 * height goes with its square.
 *
 * @param seen velocity as stated, m/s; at last contact from the force, m/s; the highest of the record where it is known
 * @source impulse and momentum; widths: convention
 */
export function peakVelocityAsTakeoff(seen: {
  readonly statedMPerS: number | null;
  readonly takeoff: Reading<'m/s'>;
  readonly peakMPerS: number | null;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'peak-velocity-as-takeoff', about: seen.about, source: SOURCE };
  const { statedMPerS: stated, takeoff, peakMPerS: peak } = seen;
  if (stated === null || !isKnown(takeoff)) {
    return cannotTell(
      base,
      `Whether the velocity stated is that of take-off cannot be told: ${stated === null ? 'none is stated' : 'there is no force record to hold it against'}.`,
    );
  }
  if (isNear(stated, takeoff.value, SAME) || Math.abs(stated - takeoff.value) <= 2 * (takeoff.u ?? 0)) {
    return fine(base, 'The velocity stated is that of last contact.');
  }
  const isPeak =
    peak === null ? stated > takeoff.value && stated <= takeoff.value * (1 + MOST_ABOVE) : isNear(stated, peak, SAME);
  const tooHigh = (stated / takeoff.value) ** 2 - 1;
  return questioned(
    base,
    isPeak
      ? `${stated.toFixed(2)} m/s ${peak === null ? 'looks like' : 'is'} the highest velocity, not that of take-off. At last contact it is ${takeoff.value.toFixed(2)} m/s; the height would come out ${inPercent(tooHigh, 0)} % too high.`
      : `${stated.toFixed(2)} m/s is not the velocity at last contact, ${takeoff.value.toFixed(2)} m/s, a jump of ${(takeoff.value ** 2 / (2 * standardGravity.value)).toFixed(2)} m.`,
    { label: 'Velocity as stated', value: stated, unit: 'm/s' },
    { label: 'Velocity at last contact', value: takeoff.value, unit: 'm/s' },
  );
}
