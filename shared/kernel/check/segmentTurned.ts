import type { CaseCheck } from '../../assess/assessment.ts';
import { isKnown, type Reading, type Source } from '../../quantity.ts';
import { cannotTell, fine, inDegrees, inPercent, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'Foreshortening: a segment turned by θ looks L cos θ long. The limit of 3 % is a convention',
  status: 'derived',
};

/** A segment that looks shorter than this share of itself is turned out of the plane. */
const LEAST_SHARE = 0.97;

/**
 * Mistake 5: was a segment that is turned out of the picture read as if it lay in it? It then looks shorter than it is.
 *
 * @param seen the turn found from its length (outOfPlaneAngle), rad, and the segment and instant in words
 * @source foreshortening; limit of 3 %: convention
 */
export function segmentTurned(seen: {
  readonly turn: Reading<'rad'>;
  readonly segment: string;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'segment-turned', about: seen.about, source: SOURCE };
  const { turn, segment } = seen;
  if (!isKnown(turn)) {
    return cannotTell(base, `Whether ${segment} lies in the picture cannot be told: ${turn.unknown}.`);
  }
  const share = Math.cos(turn.value);
  if (share >= LEAST_SHARE) return fine(base, `The length of ${segment} fits its lying in the picture.`);
  if (Math.cos(Math.max(0, turn.value - 2 * (turn.u ?? 0))) >= LEAST_SHARE) {
    return cannotTell(
      base,
      `Whether ${segment} lies in the picture cannot be told: ${inDegrees(turn.value)}° is within its own uncertainty of a length misread.`,
    );
  }
  return questioned(
    base,
    `Seen ${inPercent(1 - share, 0)} % shorter than it is, ${segment} is turned ${inDegrees(turn.value)}° out of the picture. Angles read there are not the joint's own: film square to the movement, or leave them out.`,
    { label: 'Length seen over true length', value: share, unit: '1' },
    { label: 'Least for a segment in the picture', value: LEAST_SHARE, unit: '1' },
  );
}
