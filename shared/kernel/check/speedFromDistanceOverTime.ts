import type { CaseCheck } from '../../assess/assessment.ts';
import { isKnown, type Reading, type Source } from '../../quantity.ts';
import { cannotTell, fine, isNear, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'Distance over time is only the horizontal part: v_x = v cos θ',
  status: 'derived',
};

/** Rounding of a typed speed. Convention. */
const SAME = 0.02;

/**
 * Mistake 10: was the release speed taken as distance over time? That leaves out the part that carries the ball up.
 *
 * @param seen speed as stated, m/s; the horizontal part and the speed itself, from the fitted flight or from the angle
 * @source components of a velocity
 */
export function speedFromDistanceOverTime(seen: {
  readonly statedMPerS: number | null;
  readonly horizontal: Reading<'m/s'>;
  readonly speed: Reading<'m/s'>;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'speed-from-distance-over-time', about: seen.about, source: SOURCE };
  const { statedMPerS: stated, horizontal, speed } = seen;
  if (stated === null || !isKnown(horizontal) || !isKnown(speed)) {
    return cannotTell(
      base,
      `Whether the speed stated is the whole speed cannot be told: ${stated === null ? 'none is stated' : "the ball's flight is not fitted"}.`,
    );
  }
  if (isNear(stated, speed.value, SAME) || Math.abs(stated - speed.value) <= 2 * (speed.u ?? 0)) {
    return fine(base, 'The speed stated is that of the fitted flight.');
  }
  return questioned(
    base,
    isNear(stated, horizontal.value, SAME)
      ? `${stated.toFixed(2)} m/s is how fast the ball goes forward: distance over time. Its speed, with the part that carries it up, is ${speed.value.toFixed(2)} m/s.`
      : `The ball's own flight gives ${speed.value.toFixed(2)} m/s, not ${stated.toFixed(2)} m/s.`,
    { label: 'Speed as stated', value: stated, unit: 'm/s' },
    { label: 'Speed from the flight', value: speed.value, unit: 'm/s' },
  );
}
