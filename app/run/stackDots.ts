/**
 * Dots side by side on a line, each at its own place; where two would touch, the later one goes a level up. None hides
 * another.
 * @param xs places along the line, rising
 * @param width room one dot needs, in the same unit
 */
export function stackDots(
  xs: readonly number[],
  width: number,
): readonly { readonly x: number; readonly level: number }[] {
  /** Right end of the last dot on each level. */
  const ends: number[] = [];
  return xs.map((x) => {
    const free = ends.findIndex((end) => x - end >= width);
    const level = free < 0 ? ends.length : free;
    ends[level] = x;
    return { x, level };
  });
}
