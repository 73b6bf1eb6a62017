import type { CaseCheck } from '../../assess/assessment.ts';
import { isKnown, type Reading, type Source } from '../../quantity.ts';
import { leastSpeedAngle } from '../flight/leastSpeedAngle.ts';
import { cannotTell, fine, inDegrees, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'Least-speed angle 45° + ½ atan(Δh/d), Brancazio 1981, Am J Phys 49(4):356-365. For throws whose speed falls with the angle, less still: Linthorne, Brunel University; Lenz & Rappl 2010, arXiv 1007.3689',
  status: 'derived',
};

/** Rounding of a typed angle. Convention. */
const BAND_RAD = Math.PI / 180;

/**
 * Mistake 12: was 45° called the best angle whatever the target? It is so only for a target level with the release:
 * steeper for a higher one, flatter for a lower one.
 *
 * @param seen angle stated as best, rad; distance and rise to the target, m
 * @source Brancazio 1981; Linthorne, Brunel University; Lenz & Rappl 2010, arXiv 1007.3689
 */
export function fortyFiveIsBest(seen: {
  readonly statedBestRad: number | null;
  readonly distance: Reading<'m'>;
  readonly rise: Reading<'m'>;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'forty-five-is-best', about: seen.about, source: SOURCE };
  const { statedBestRad: stated, distance, rise } = seen;
  if (stated === null || !isKnown(distance) || !isKnown(rise)) {
    const why = stated === null ? 'none is stated' : 'distance and height of the target are not both known';
    return cannotTell(base, `Whether the angle stated needs the least speed cannot be told: ${why}.`);
  }
  const least = leastSpeedAngle(distance, rise);
  if (Math.abs(stated - least.value) <= BAND_RAD + 2 * (least.u ?? 0)) {
    return fine(base, 'The angle stated is the one that needs the least speed.');
  }
  const isFortyFive = Math.abs(stated - Math.PI / 4) <= BAND_RAD;
  return questioned(
    base,
    `${isFortyFive ? '45° is best only for a target level with the release' : `${inDegrees(stated)}° is not the angle of least speed here`}: with ${Math.abs(rise.value).toFixed(2)} m ${rise.value > 0 ? 'up' : 'down'} over ${distance.value.toFixed(2)} m it is ${inDegrees(least.value)}°.`,
    { label: 'Best angle as stated', value: stated, unit: 'rad' },
    { label: 'Angle of least speed', value: least.value, unit: 'rad' },
  );
}
