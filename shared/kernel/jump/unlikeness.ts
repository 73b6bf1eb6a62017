import type { Quantity } from '../../quantity.ts';

/** A jump height with all that decides what it may be compared with. */
export interface JumpHeight {
  readonly quantity: Quantity<'m'>;
  /** Where zero is: the level at take-off, or standing. */
  readonly reference: 'take-off' | 'standing';
  readonly method: string;
  /** Null: not recorded. */
  readonly arms: string | null;
}

/** What keeps two heights from being compared, in words; empty where nothing does. */
export function unlikeness(a: JumpHeight, b: JumpHeight): string[] {
  const words: string[] = [];
  if (a.reference !== b.reference) {
    words.push(`one is measured from ${a.reference}, the other from ${b.reference}`);
  }
  if (a.method !== b.method)
    words.push(`one is by ${a.method.replaceAll('-', ' ')}, the other by ${b.method.replaceAll('-', ' ')}`);
  if (a.arms === null || b.arms === null) words.push('how the arms were used is not recorded for both');
  else if (a.arms !== b.arms)
    words.push(`the arms were ${armWords(a.arms)} in one and ${armWords(b.arms)} in the other`);
  return words;
}

function armWords(arms: string): string {
  return arms === 'hips' ? 'on the hips' : arms;
}
