import type { CaseCheck } from '../../assess/assessment.ts';
import type { Source } from '../../quantity.ts';
import { type JumpHeight, unlikeness } from '../jump/unlikeness.ts';
import { cannotTell, fine, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'Heights of one jump by different methods differ by up to 15 cm: Asian J Sports Med, article 12921; Eythorsdottir et al. 2024, Sports Medicine 54(11); Aragón-Vargas 2000',
  status: 'published',
};

type Compared = Omit<JumpHeight, 'quantity'> & { readonly label: string; readonly heightM: number };

/**
 * Are two heights compared that are not alike? They may be only if reference, method and use of the arms agree: a rise
 * in a skill over a standing jump-and-reach score says nothing about effort.
 *
 * @param seen two heights that something sets side by side, each with its label
 * @source Asian J Sports Med, article 12921; Eythorsdottir et al. 2024; Aragón-Vargas 2000
 */
export function unlikeHeightsCompared(seen: {
  readonly a: Compared;
  readonly b: Compared;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'unlike-heights-compared', about: seen.about, source: SOURCE };
  const { a, b } = seen;
  const { differs, unrecorded } = unlikeness(a, b);
  const subject = `${a.label} and ${b.label}`;
  if (differs.length > 0) {
    return questioned(
      base,
      `${subject} are not to be compared: ${differs.join('; ')}.`,
      { label: a.label, value: a.heightM, unit: 'm' },
      { label: b.label, value: b.heightM, unit: 'm' },
    );
  }
  if (unrecorded.length > 0) {
    return cannotTell(base, `Whether ${subject} may be compared cannot be told: ${unrecorded.join('; ')}.`);
  }
  return fine(base, `${subject} were measured alike and may be compared.`);
}
