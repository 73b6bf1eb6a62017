import type { CaseCheck } from '../../assess/assessment.ts';
import { isKnown, type Reading, type Source } from '../../quantity.ts';

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
    return { ...base, verdict: 'fine', sentence: 'This movement aims at no target.', numbers: [] };
  }
  if (!isKnown(angle)) {
    return {
      ...base,
      verdict: 'cannot tell',
      sentence: `There is no release angle to judge: ${angle.unknown}.`,
      numbers: [],
    };
  }
  if (seen.targetDistanceM === null || seen.targetHeightM === null) {
    return {
      ...base,
      verdict: 'questioned',
      sentence: `A release at ${((angle.value * 180) / Math.PI).toFixed(1)}° is neither flat nor steep by itself. Enter how far away and how high the target is before judging it.`,
      numbers: [{ label: 'Release angle', value: angle.value, unit: 'rad' }],
    };
  }
  return { ...base, verdict: 'fine', sentence: 'The release angle is judged against its own target.', numbers: [] };
}
