import type { Quantity } from '../../quantity.ts';

/** A jump height with all that decides what it may be compared with. */
export interface JumpHeight {
  readonly quantity: Quantity<'m'>;
  /** Where zero is: the level at take-off, or standing. */
  readonly reference: 'take-off' | 'standing';
  readonly method: string;
  /** Null or `not recorded`: unknown. */
  readonly arms: string | null;
}

export interface Unlikeness {
  /** In what two heights differ, in words. */
  readonly differs: readonly string[];
  /** What would have to be known to tell, in words. */
  readonly unrecorded: readonly string[];
}

/**
 * What keeps two heights from being compared: another reference, method or use of the arms. Unlike heights differ by up
 * to 15 cm for one and the same jump (Asian J Sports Med, article 12921; Eythorsdottir et al. 2024, Sports Medicine
 * 54(11), a review of equations).
 *
 * @source as named above
 */
export function unlikeness(a: Omit<JumpHeight, 'quantity'>, b: Omit<JumpHeight, 'quantity'>): Unlikeness {
  const differs: string[] = [];
  if (a.reference !== b.reference) differs.push(`one is measured from ${a.reference}, the other from ${b.reference}`);
  if (a.method !== b.method) differs.push(`one is by ${plain(a.method)}, the other by ${plain(b.method)}`);
  const isKnown = [a.arms, b.arms].every((arms) => arms !== null && arms !== 'not recorded');
  if (isKnown && a.arms !== b.arms)
    differs.push(`the arms were ${armWords(a.arms)} in one and ${armWords(b.arms)} in the other`);
  return { differs, unrecorded: isKnown ? [] : ['how the arms were used is not recorded for both'] };
}

function plain(method: string): string {
  return method.replaceAll('-', ' ');
}

function armWords(arms: string | null): string {
  return arms === 'hips' ? 'on the hips' : String(arms);
}
