import type { CaseCheck } from '../../assess/assessment.ts';
import { isKnown, type Reading, type Source } from '../../quantity.ts';
import { depthFactor } from '../plane/depthFactor.ts';
import { cannotTell, fine, inPercent, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'Pinhole camera, similar triangles: lengths too long by d / (D − d). The limit of 1 % is a convention',
  status: 'derived',
};

const WORTH_CORRECTING = 0.01;

/**
 * Mistake 15: was the scale taken in another plane than the movement: off a wall, a ring, a line behind it?
 *
 * @param seen camera to the plane of the scale, m; how much nearer to the camera the movement is, m (farther: negative);
 *   whether lengths have been corrected for it
 * @source similar triangles; limit of 1 %: convention
 */
export function scaleInAnotherPlane(seen: {
  readonly cameraDistance: Reading<'m'>;
  readonly nearerBy: Reading<'m'>;
  readonly isCorrected: boolean;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'scale-in-another-plane', about: seen.about, source: SOURCE };
  const { cameraDistance, nearerBy } = seen;
  if (!isKnown(cameraDistance) || !isKnown(nearerBy) || !(cameraDistance.value > nearerBy.value)) {
    return cannotTell(
      base,
      'Whether the scale lies in the plane of the movement cannot be told: enter how far the camera stood from the scale, and how much nearer or farther the movement was.',
    );
  }
  const factor = depthFactor(cameraDistance, nearerBy);
  if (Math.abs(factor.value) <= WORTH_CORRECTING) return fine(base, 'The scale lies in the plane of the movement.');
  if (seen.isCorrected) {
    return fine(
      base,
      `The scale lies in another plane than the movement, and lengths are corrected for it: they would read ${inPercent(Math.abs(factor.value))} % too ${factor.value > 0 ? 'long' : 'short'}.`,
    );
  }
  return questioned(
    base,
    `The movement is ${Math.abs(nearerBy.value).toFixed(2)} m ${nearerBy.value > 0 ? 'nearer' : 'farther'} than the scale: with the camera ${cameraDistance.value.toFixed(1)} m away every length and speed reads ${inPercent(Math.abs(factor.value))} % too ${factor.value > 0 ? 'long' : 'short'}.`,
    { label: 'Lengths off by', value: factor.value, unit: '1' },
    { label: 'Worth correcting from', value: WORTH_CORRECTING, unit: '1' },
  );
}
