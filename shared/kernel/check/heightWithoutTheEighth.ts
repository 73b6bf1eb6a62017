import type { CaseCheck } from '../../assess/assessment.ts';
import type { Source } from '../../quantity.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { cannotTell, fine, isNear, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'Half the time in the air is spent rising: h = g (t / 2)² / 2 = g t² / 8',
  status: 'derived',
};

/** Rounding of a typed height and time. Convention. */
const SAME = 0.03;

/**
 * Mistake 8: was the height worked out as g t²/2 with the whole time in the air? It is then four times too high.
 *
 * @param seen height as stated, m, and the time in the air it came from, s; null: not known
 * @source free fall
 */
export function heightWithoutTheEighth(seen: {
  readonly statedHeightM: number | null;
  readonly flightTimeS: number | null;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'height-without-the-eighth', about: seen.about, source: SOURCE };
  const { statedHeightM: stated, flightTimeS: t } = seen;
  if (stated === null || t === null || !(t > 0)) {
    return cannotTell(
      base,
      `Whether the height follows from the time in the air cannot be told: ${stated === null ? 'no height is stated' : 'no time in the air is recorded'}.`,
    );
  }
  const right = (standardGravity.value * t * t) / 8;
  if (isNear(stated, right, SAME)) return fine(base, 'The height follows from the time in the air.');
  return questioned(
    base,
    `${t.toFixed(3)} s in the air is a jump of ${right.toFixed(3)} m, not ${stated.toFixed(3)} m.${
      isNear(stated, 4 * right, SAME)
        ? ' That is exactly four times as much: g t² / 2 with the whole time. Only half of it is spent rising.'
        : ''
    }`,
    { label: 'Height as stated', value: stated, unit: 'm' },
    { label: 'g t² / 8', value: right, unit: 'm' },
  );
}
