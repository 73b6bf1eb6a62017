import type { CaseCheck } from '../../assess/assessment.ts';
import { isKnown, type Reading, type Source } from '../../quantity.ts';
import { cannotTell, fine, inDegrees, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'A landing lower by s reads s/2 too high: derived; 0.053 m lower read 0.025 m too high in 27 jumpers, Yamashita, Murata & Inaba 2020, Applied Sciences 10(3):776. The limits of 10° and 3 cm are a convention',
  status: 'published',
};

/** Knees bent by this much more at landing than at take-off. */
const MORE_BENT_RAD = (10 * Math.PI) / 180;
/** Heights of one jump by flight time and by impulse further apart than this. */
const APART_M = 0.03;

/**
 * Mistake 9: does a height from flight time come of a landing more bent than the take-off? The body then falls further
 * than it rose, and the time in the air is too long.
 *
 * @param seen knee flexion at take-off and at first contact, rad; the heights of the same jump by flight time and by
 *   impulse, m, where there is a force record
 * @source free fall; Yamashita, Murata & Inaba 2020, Applied Sciences 10(3):776; limits: convention
 */
export function bentLanding(seen: {
  readonly kneeAtTakeoff: Reading<'rad'>;
  readonly kneeAtLanding: Reading<'rad'>;
  readonly byFlightTime: Reading<'m'>;
  readonly byImpulse: Reading<'m'>;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'bent-landing', about: seen.about, source: SOURCE };
  const { kneeAtTakeoff, kneeAtLanding, byFlightTime, byImpulse } = seen;
  const hasHeights = isKnown(byFlightTime) && isKnown(byImpulse);
  if (hasHeights) {
    const excess = byFlightTime.value - byImpulse.value;
    if (excess > Math.max(APART_M, 2 * Math.hypot(byFlightTime.u ?? 0, byImpulse.u ?? 0))) {
      return questioned(
        base,
        `Flight time reads ${(100 * excess).toFixed(1)} cm more than the impulse of the same jump, as it would after a landing about ${(200 * excess).toFixed(0)} cm lower than take-off. Use the height from the impulse.`,
        { label: 'Height from flight time', value: byFlightTime.value, unit: 'm' },
        { label: 'Height from impulse', value: byImpulse.value, unit: 'm' },
      );
    }
  }
  if (isKnown(kneeAtTakeoff) && isKnown(kneeAtLanding)) {
    const more = kneeAtLanding.value - kneeAtTakeoff.value;
    if (more - 2 * Math.hypot(kneeAtTakeoff.u ?? 0, kneeAtLanding.u ?? 0) > MORE_BENT_RAD) {
      return questioned(
        base,
        `The knee is bent ${inDegrees(more)}° more at landing than at take-off. The height from flight time reads too high by about half of what the body sank by that.`,
        { label: 'Knee flexion at landing', value: kneeAtLanding.value, unit: 'rad' },
        { label: 'Knee flexion at take-off', value: kneeAtTakeoff.value, unit: 'rad' },
      );
    }
    if (!hasHeights && more > MORE_BENT_RAD) {
      return cannotTell(base, 'Whether landing and take-off differ cannot be told: the knee angles are too uncertain.');
    }
    return fine(base, 'The legs land about as straight as they took off.');
  }
  if (hasHeights) return fine(base, 'Flight time and impulse give about the same height.');
  return cannotTell(
    base,
    'Whether landing and take-off posture agree cannot be told: there is neither a film with both knee angles nor a force record.',
  );
}
