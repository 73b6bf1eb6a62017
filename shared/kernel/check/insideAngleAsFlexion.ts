import type { CaseCheck } from '../../assess/assessment.ts';
import { isKnown, type Reading, type Source } from '../../quantity.ts';
import { cannotTell, fine, inDegrees, questioned, whyUnknown } from './answer.ts';

const SOURCE: Source = {
  cite: 'Flexion = 180° − included angle for knee and elbow; a straight joint reads 0° and 180°. The widths are a convention',
  status: 'derived',
};

const BAND_RAD = (10 * Math.PI) / 180;

/**
 * Mistake 20: was the angle inside the joint given as its flexion? A straight knee is 0° flexed and 180° inside.
 *
 * @param seen flexion as stated, rad; the same from the points of the film, or what the posture must give (standing: 0)
 * @source definition of flexion; widths: convention
 */
export function insideAngleAsFlexion(seen: {
  readonly statedFlexionRad: number | null;
  readonly flexion: Reading<'rad'>;
  readonly joint: string;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'inside-angle-as-flexion', about: seen.about, source: SOURCE };
  const { statedFlexionRad: stated, flexion, joint } = seen;
  if (stated === null || !isKnown(flexion)) {
    return cannotTell(
      base,
      `Whether ${joint} is given as flexion or as the angle inside cannot be told: ${stated === null ? 'no angle is stated' : `there is nothing to hold it against (${whyUnknown(flexion)})`}.`,
    );
  }
  const band = Math.max(BAND_RAD, 2 * (flexion.u ?? 0));
  const shown = [
    { label: 'Flexion as stated', value: stated, unit: 'rad' },
    { label: 'Flexion from the film or posture', value: flexion.value, unit: 'rad' },
  ] as const;
  if (Math.abs(stated - flexion.value) <= band) return fine(base, `The flexion of ${joint} fits.`);
  return questioned(
    base,
    Math.abs(Math.PI - stated - flexion.value) <= band
      ? `${inDegrees(stated)}° is the angle inside ${joint}; its flexion is ${inDegrees(flexion.value)}°. A straight joint is 180° inside and 0° flexed.`
      : `${inDegrees(stated)}° is not the flexion of ${joint} seen, ${inDegrees(flexion.value)}°.`,
    ...shown,
  );
}
