import type { CaseCheck } from '../../assess/assessment.ts';
import { isKnown, type Reading, type Source } from '../../quantity.ts';
import { LEAST_FLIGHT_FRAMES } from '../flight/fitRelease.ts';
import { cannotTell, fine, inDegrees, questioned, whyUnknown } from './answer.ts';

const SOURCE: Source = {
  cite: 'The ball leaves along its own path, not along the forearm; six frames of flight as the least is a convention',
  status: 'convention',
};

/** Angles closer than this agree. Convention. */
const BAND_RAD = (2 * Math.PI) / 180;

/**
 * Mistake 13: was the release angle read off the forearm instead of the ball's path?
 *
 * @param seen angle as stated, rad; angle of the fitted flight, rad; forearm above the horizontal at release, rad
 * @source free flight; six frames at least: convention
 */
export function angleFromForearm(seen: {
  readonly statedRad: number | null;
  readonly flight: Reading<'rad'>;
  readonly forearm: Reading<'rad'>;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'angle-from-forearm', about: seen.about, source: SOURCE };
  const { statedRad: stated, flight, forearm } = seen;
  if (stated === null || !isKnown(flight)) {
    return cannotTell(
      base,
      `Whether the release angle is that of the ball cannot be told: ${stated === null ? 'none is stated' : `digitise the ball in at least ${LEAST_FLIGHT_FRAMES} frames of flight (${whyUnknown(flight)})`}.`,
    );
  }
  if (Math.abs(stated - flight.value) <= Math.max(BAND_RAD, 2 * (flight.u ?? 0))) {
    return fine(base, "The release angle is that of the ball's own path.");
  }
  const isForearm = isKnown(forearm) && Math.abs(stated - forearm.value) <= BAND_RAD;
  return questioned(
    base,
    `${isForearm ? `${inDegrees(stated)}° is where the forearm points.` : `${inDegrees(stated)}° is not the way the ball goes.`} Its own path leaves at ${inDegrees(flight.value)}°.`,
    { label: 'Release angle as stated', value: stated, unit: 'rad' },
    { label: "Release angle of the ball's path", value: flight.value, unit: 'rad' },
  );
}
