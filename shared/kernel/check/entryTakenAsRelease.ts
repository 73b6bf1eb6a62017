import type { CaseCheck } from '../../assess/assessment.ts';
import { isKnown, type Reading, type Source } from '../../quantity.ts';
import { entryAngle } from '../flight/entryAngle.ts';
import { cannotTell, fine, inDegrees, questioned, whyUnknown } from './answer.ts';

const SOURCE: Source = {
  cite: 'tan θ_e = tan θ − 2 Δh / d: entry and release angle agree only where the target is level with the release. Brancazio 1981, Am J Phys 49(4):356-365',
  status: 'derived',
};

/** Drag steepens the entry by a degree or two; within this of the vacuum angle nothing is questioned. Convention. */
const BAND_RAD = (4 * Math.PI) / 180;
/** Angles this close were taken to be the same. */
const SAME_RAD = (0.5 * Math.PI) / 180;

/**
 * Mistake 11: was the entry angle taken to be the release angle?
 *
 * @param seen entry angle as stated, rad; release angle, rad; distance and rise to the target, m
 * @source Brancazio 1981, Am J Phys 49(4):356-365
 */
export function entryTakenAsRelease(seen: {
  readonly statedEntryRad: number | null;
  readonly releaseAngle: Reading<'rad'>;
  readonly distance: Reading<'m'>;
  readonly rise: Reading<'m'>;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'entry-taken-as-release', about: seen.about, source: SOURCE };
  const { statedEntryRad: stated, releaseAngle, distance, rise } = seen;
  if (stated === null || !isKnown(releaseAngle) || !isKnown(distance) || !isKnown(rise)) {
    const why = stated === null ? 'none is stated' : whyUnknown(releaseAngle, distance, rise);
    return cannotTell(base, `Whether the entry angle follows from the release cannot be told: ${why}.`);
  }
  const entry = entryAngle(distance, rise, releaseAngle);
  const u = 2 * (entry.u ?? 0);
  if (Math.abs(stated - entry.value) <= BAND_RAD + u) {
    return fine(base, 'The entry angle follows from release angle, distance and rise.');
  }
  return questioned(
    base,
    Math.abs(stated - releaseAngle.value) <= SAME_RAD
      ? `The entry angle is given as ${inDegrees(stated)}°, the same as the release. The target is ${Math.abs(rise.value).toFixed(2)} m ${rise.value > 0 ? 'higher' : 'lower'}, so the ball comes in at about ${inDegrees(entry.value)}°.`
      : `From ${inDegrees(releaseAngle.value)}° the ball comes in at about ${inDegrees(entry.value)}°, not at ${inDegrees(stated)}°.`,
    { label: 'Entry angle as stated', value: stated, unit: 'rad' },
    { label: 'Entry angle from release and target', value: entry.value, unit: 'rad' },
  );
}
