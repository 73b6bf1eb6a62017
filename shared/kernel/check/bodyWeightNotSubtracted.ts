import type { CaseCheck } from '../../assess/assessment.ts';
import type { Source } from '../../quantity.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { cannotTell, fine, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'Impulse and momentum of the net force. 4 m/s would be a jump of 0.82 m; as a limit it is a convention',
  status: 'convention',
};

/** Faster than anyone leaves the ground by their own legs from standing. */
export const GREATEST_TAKEOFF_M_PER_S = 4;

/**
 * Mistake 6: was the force integrated with body weight still in it? The take-off velocity then holds g times the
 * duration on top.
 *
 * @param seen take-off velocity as stated, m/s, and how long the force was integrated, s; null: not known
 * @source impulse and momentum of the net force; limit of 4 m/s: convention
 */
export function bodyWeightNotSubtracted(seen: {
  readonly takeoffVelocityMPerS: number | null;
  readonly integratedS: number | null;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'body-weight-not-subtracted', about: seen.about, source: SOURCE };
  const { takeoffVelocityMPerS: v, integratedS: t } = seen;
  if (v === null) return cannotTell(base, 'There is no take-off velocity to look at.');
  if (v <= GREATEST_TAKEOFF_M_PER_S) return fine(base, 'The take-off velocity is one that legs can give.');
  const without = t === null ? null : v - standardGravity.value * t;
  const possible = without !== null && without > 0 && without <= GREATEST_TAKEOFF_M_PER_S ? without : null;
  return questioned(
    base,
    `Nobody leaves the ground at ${v.toFixed(2)} m/s, a jump of ${((v * v) / (2 * standardGravity.value)).toFixed(1)} m. Take body weight off the force before integrating${possible === null ? '' : `: over ${t?.toFixed(2)} s that leaves ${possible.toFixed(2)} m/s`}.`,
    { label: 'Take-off velocity as stated', value: v, unit: 'm/s' },
    possible === null
      ? { label: 'Greatest possible', value: GREATEST_TAKEOFF_M_PER_S, unit: 'm/s' }
      : { label: 'Without body weight', value: possible, unit: 'm/s' },
  );
}
