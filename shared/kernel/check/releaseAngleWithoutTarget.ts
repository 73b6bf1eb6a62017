import type { CaseCheck } from '../../assess/assessment.ts';
import { isKnown, type Reading, type Source } from '../../quantity.ts';
import { cannotTell, fine, inDegrees, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'Least-speed angle 45° + ½ atan(Δh/d): it depends on where the target is. Brancazio 1981, Am J Phys 49(4):356-365',
  status: 'derived',
};

/**
 * Is a release angle judged without knowing what it was aimed at? Whether an angle is flat or steep depends on the
 * distance and height of the target; 45° is best only for one level with the release.
 *
 * @param seen the angle, and the target as entered
 * @source vacuum flight
 */
export function releaseAngleWithoutTarget(seen: {
  readonly releaseAngle: Reading<'rad'>;
  readonly targetDistanceM: number | null;
  readonly targetHeightM: number | null;
  readonly aimsAtTarget: boolean;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'release-angle-without-target', about: seen.about, source: SOURCE };
  const angle = seen.releaseAngle;
  if (!seen.aimsAtTarget) {
    return fine(base, 'This movement aims at no target.');
  }
  if (!isKnown(angle)) {
    return cannotTell(base, `There is no release angle to judge: ${angle.unknown}.`);
  }
  if (seen.targetDistanceM === null || seen.targetHeightM === null) {
    return questioned(
      base,
      `A release at ${inDegrees(angle.value)}° is neither flat nor steep by itself. Enter how far away and how high the target is before judging it.`,
      { label: 'Release angle', value: angle.value, unit: 'rad' },
    );
  }
  return fine(base, 'The release angle is judged against its own target.');
}
