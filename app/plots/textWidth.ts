/** Room a label needs, in the drawing's units: the house sans at 13 units averages 6.3 a character. An estimate on the wide side. */
export function textWidth(text: string): number {
  return text.length * 6.6;
}
