/** Characters with the combining marks that belong to them. */
export function graphemes(text: string): string[] {
  return text.match(/\P{M}\p{M}*|\p{M}+/gu) ?? [];
}
