import type { CaseCheck } from '../../assess/assessment.ts';
import { isKnown, type Reading, type Source } from '../../quantity.ts';
import { cannotTell, fine, inDegrees, questioned, whyUnknown } from './answer.ts';

const SOURCE: Source = {
  cite: 'Least speed that reaches a point in a vacuum; drag only asks for more. Brancazio 1981, Am J Phys 49(4):356-365',
  status: 'derived',
};

/**
 * Can this release have scored? A speed below the least speed reaches the target at no angle; a ball still rising at a
 * ring cannot fall into it. Differences within two standard uncertainties are not questioned.
 *
 * @param seen speed and least speed (m/s), entry angle (rad, downwards positive); `mustFall`: the target is entered from above
 * @source vacuum flight
 */
export function impossibleRelease(seen: {
  readonly releaseSpeed: Reading<'m/s'>;
  readonly leastSpeed: Reading<'m/s'>;
  readonly entryAngle: Reading<'rad'>;
  readonly mustFall: boolean;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'impossible-release', about: seen.about, source: SOURCE };
  const { releaseSpeed: speed, leastSpeed: least, entryAngle: entry } = seen;
  if (isKnown(speed) && isKnown(least)) {
    const u = Math.hypot(speed.u ?? 0, least.u ?? 0);
    if (least.value - speed.value > Math.max(2 * u, 0.005 * least.value)) {
      return questioned(
        base,
        `A ball released at ${speed.value.toFixed(2)} m/s reaches this target at no angle; the least is ${least.value.toFixed(2)} m/s. Check the scale, the clock and the distance.`,
        { label: 'Release speed', value: speed.value, unit: 'm/s' },
        { label: 'Least speed', value: least.value, unit: 'm/s' },
      );
    }
  }
  if (seen.mustFall && isKnown(entry) && entry.value + 2 * (entry.u ?? 0) <= 0) {
    return questioned(
      base,
      `The ball would still be rising ${inDegrees(-entry.value)}° at the target, so it cannot fall into it.`,
      { label: 'Entry angle', value: entry.value, unit: 'rad' },
      { label: 'Needed, more than', value: 0, unit: 'rad' },
    );
  }
  if (!isKnown(speed) || !isKnown(least) || (seen.mustFall && !isKnown(entry))) {
    const why = whyUnknown(speed, least, ...(seen.mustFall ? [entry] : []));
    return cannotTell(base, `Whether this release can reach its target cannot be told: ${why}.`);
  }
  return fine(base, 'This release can reach its target.');
}
