/**
 * Rows for labels that stand along one axis, so that none overlaps its neighbour: each goes to the first row in which
 * it clears the label before it by `gap`. Items must come in rising order of `start`.
 * @returns the row of each item, from 0
 */
export function stackLabels(
  items: readonly { readonly start: number; readonly width: number }[],
  gap: number,
): readonly number[] {
  const ends: number[] = [];
  return items.map(({ start, width }) => {
    const free = ends.findIndex((end) => end + gap <= start);
    const row = free === -1 ? ends.length : free;
    ends[row] = start + width;
    return row;
  });
}
