import type { CaseCheck } from '../../assess/assessment.ts';
import { isKnown, type Reading, type Source } from '../../quantity.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { cannotTell, fine, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'Things fall down, and heads are above feet. Image rows count downwards',
  status: 'derived',
};

/**
 * Mistake 16: does y point down, as in an image, where it should point up? All that falls then rises, and every angle
 * has the other sign.
 *
 * @param seen gravity found in free flight, m/s², downward positive; how far the crown is above the feet, m, in the
 *   coordinates used
 * @source free fall; image rows count downwards
 */
export function imageYDown(seen: {
  readonly gravityFound: Reading<'m/s2'>;
  readonly headAboveFeetM: number | null;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'image-y-down', about: seen.about, source: SOURCE };
  const { gravityFound: g, headAboveFeetM: head } = seen;
  if (isKnown(g) && g.value + 2 * (g.u ?? 0) < 0) {
    return questioned(
      base,
      'What flies here falls upwards: y points down, as rows of an image do. Turn it round before any angle or velocity is read.',
      { label: 'Gravity found', value: g.value, unit: 'm/s2' },
      { label: 'Gravity', value: standardGravity.value, unit: 'm/s2' },
    );
  }
  if (head !== null && head < 0) {
    return questioned(
      base,
      'The crown lies below the feet throughout: y points down, as rows of an image do. Turn it round first.',
      { label: 'Crown above feet', value: head, unit: 'm' },
      { label: 'Least for somebody upright', value: 0, unit: 'm' },
    );
  }
  if ((isKnown(g) && g.value - 2 * (g.u ?? 0) > 0) || head !== null) return fine(base, 'Up is up.');
  return cannotTell(base, 'Which way y points cannot be told: neither free flight nor crown and feet are digitised.');
}
