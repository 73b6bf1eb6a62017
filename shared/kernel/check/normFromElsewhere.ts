import type { CaseCheck } from '../../assess/assessment.ts';
import type { Source } from '../../quantity.ts';
import type { Unit } from '../../units.ts';
import { cannotTell, fine, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'Similar groups differ by about 17 cm between studies, beyond real differences: Eythorsdottir et al. 2024, Sports Med 54(11)',
  status: 'published',
};

/** What a value and a norm must share. Null: not recorded. */
export interface NormTags {
  readonly method: string | null;
  readonly reference: string | null;
  readonly arms: string | null;
  readonly sex: string | null;
  readonly sport: string | null;
}

const WORDS: Readonly<Record<keyof NormTags, string>> = {
  method: 'method',
  reference: 'level that counts as zero',
  arms: 'use of the arms',
  sex: 'sex',
  sport: 'sport',
};

/**
 * Mistake 29: is a value held against a norm taken by another method, of another sex or another sport? No norm is on
 * file yet; whatever sets a value beside one asks this first. A tag that the norm leaves open (null) binds nobody.
 *
 * @param seen value and norm, each with its tags
 * @source Eythorsdottir et al. 2024, Sports Med 54(11)
 */
export function normFromElsewhere(seen: {
  readonly value: { readonly label: string; readonly value: number; readonly unit: Unit; readonly tags: NormTags };
  readonly norm: { readonly label: string; readonly value: number; readonly tags: NormTags } | null;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'norm-from-elsewhere', about: seen.about, source: SOURCE };
  const { value, norm } = seen;
  if (norm === null) return cannotTell(base, 'There is no norm to compare with.');
  const bound = (Object.keys(WORDS) as (keyof NormTags)[]).filter((tag) => norm.tags[tag] !== null);
  const differs = bound.filter((tag) => value.tags[tag] !== null && value.tags[tag] !== norm.tags[tag]);
  const open = bound.filter((tag) => value.tags[tag] === null);
  const list = (tags: readonly (keyof NormTags)[]) => tags.map((tag) => WORDS[tag]).join(', ');
  if (differs.length > 0) {
    return questioned(
      base,
      `This norm does not fit: it has another ${list(differs)}. What the value would be there is not known.`,
      { label: value.label, value: value.value, unit: value.unit },
      { label: norm.label, value: norm.value, unit: value.unit },
    );
  }
  if (open.length > 0) return cannotTell(base, `Whether this norm fits cannot be told: ${list(open)} not recorded.`);
  return fine(base, 'Value and norm were taken alike.');
}
