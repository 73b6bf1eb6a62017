/**
 * Removes the jumps of a whole turn from a series of angles, so that it can be smoothed and differentiated. Each value
 * is moved by whole turns to within half a turn of the one before; gaps (null) are stepped over.
 *
 * @param angles rad
 * @returns rad, the first value unchanged
 * @source the nearest of the angles that differ by whole turns
 */
export function unwrap(angles: readonly (number | null)[]): (number | null)[] {
  const turn = 2 * Math.PI;
  let before: number | null = null;
  return angles.map((angle) => {
    if (angle === null) return null;
    before = before === null ? angle : angle - turn * Math.round((angle - before) / turn);
    return before;
  });
}
