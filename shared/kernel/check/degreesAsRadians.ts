import type { CaseCheck } from '../../assess/assessment.ts';
import { isKnown, type Reading, type Source } from '../../quantity.ts';
import { cannotTell, fine, inDegrees, isNear, questioned } from './answer.ts';

const SOURCE: Source = { cite: '1 rad = 57.296°: a slip between them shows as that factor', status: 'derived' };

const PER_RADIAN = 180 / Math.PI;
/** A slip is exact; what it is held against is not. Convention. */
const SAME = 0.1;

/**
 * Mistake 19: were degrees taken for radians, or degrees a second for radians a second? What results is 57.3 times too
 * big or too small.
 *
 * @param seen number as stated and the same found in another way, one unit, rad or rad/s or what follows from them in
 *   proportion; where there is no other, the greatest size that is possible
 * @source definition of the radian
 */
export function degreesAsRadians(seen: {
  readonly stated: number | null;
  readonly expected: Reading<'rad' | 'rad/s' | 'm/s'>;
  readonly greatest: number | null;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'degrees-as-radians', about: seen.about, source: SOURCE };
  const { stated, expected, greatest } = seen;
  if (stated !== null && isKnown(expected) && expected.value !== 0) {
    for (const factor of [PER_RADIAN, 1 / PER_RADIAN]) {
      if (!isNear(stated, expected.value * factor, SAME)) continue;
      return questioned(
        base,
        `${stated.toPrecision(3)} is ${factor > 1 ? '57.3 times' : 'a 57.3th of'} the ${expected.value.toPrecision(3)} expected: degrees and radians were mixed.`,
        { label: 'As stated', value: stated, unit: expected.unit },
        { label: 'Expected', value: expected.value, unit: expected.unit },
      );
    }
    return fine(base, 'Degrees and radians are kept apart.');
  }
  if (stated !== null && greatest !== null) {
    if (Math.abs(stated) <= greatest) return fine(base, 'The angle is a possible one.');
    return questioned(
      base,
      `${inDegrees(stated)}° is no angle of a body. ${Math.abs(stated) <= greatest * PER_RADIAN ? `The ${stated.toPrecision(3)} typed as radians looks like degrees.` : 'Check its unit.'}`,
      { label: 'Angle as stated', value: stated, unit: 'rad' },
      { label: 'Greatest possible', value: greatest, unit: 'rad' },
    );
  }
  return cannotTell(
    base,
    `Whether degrees and radians were mixed cannot be told: ${stated === null ? 'no number is stated' : 'there is nothing to hold it against'}.`,
  );
}
