import type { CaseCheck } from '../../assess/assessment.ts';
import { isKnown, type Quantity, type Reading, type Source } from '../../quantity.ts';
import { NO_AIR } from '../flight/release.ts';
import { speedToScore } from '../flight/speedToScore.ts';
import { cannotTell, fine, inPercent, questioned, whyUnknown } from './answer.ts';

const SOURCE: Source = {
  cite: 'Quadratic drag along the path, integrated; the drag coefficient is the ball’s own. The limit of 1 % is a convention',
  status: 'derived',
};

const WORTH_SAYING = 0.01;

/**
 * Mistake 36: is a speed quoted to three figures that leaves drag out? A basketball needs 4 to 7 % more than in a vacuum.
 *
 * @param seen release angle, rad; distance and rise to the target, m; drag factor of the ball, /m (dragFactor); whether
 *   the speed took it into account
 * @source quadratic drag, integrated; limit of 1 %: convention
 */
export function dragIgnored(seen: {
  readonly angle: Reading<'rad'>;
  readonly distance: Reading<'m'>;
  readonly rise: Reading<'m'>;
  readonly drag: Quantity<'/m'> | null;
  readonly isDragIncluded: boolean;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'drag-ignored', about: seen.about, source: SOURCE };
  const { angle, distance, rise, drag } = seen;
  if (seen.isDragIncluded) return fine(base, 'The speed takes the drag of its ball into account.');
  if (!isKnown(angle) || !isKnown(distance) || !isKnown(rise) || drag === null) {
    const why = whyUnknown(angle, distance, rise) ?? 'which ball it was is not entered';
    return cannotTell(base, `How much leaving out drag matters cannot be told: ${why}.`);
  }
  const vacuum = speedToScore(distance, rise, angle, NO_AIR, false);
  const air = speedToScore(distance, rise, angle, { drag, lift: null }, false);
  if (!isKnown(vacuum) || !isKnown(air)) {
    return cannotTell(base, 'How much leaving out drag matters cannot be told: at this angle the ball does not reach.');
  }
  const more = air.value / vacuum.value - 1;
  if (more <= WORTH_SAYING) return fine(base, 'Over this distance drag hardly matters.');
  return questioned(
    base,
    `Without drag the speed reads ${inPercent(more)} % low over this distance: ${vacuum.value.toFixed(2)} m/s in a vacuum are ${air.value.toFixed(2)} m/s through air. Name the ball.`,
    { label: 'Speed to reach the target in a vacuum', value: vacuum.value, unit: 'm/s' },
    { label: 'Through air', value: air.value, unit: 'm/s' },
  );
}
