/**
 * Whether a horizontal and a vertical scale disagree: the pixels are stretched or the camera was tilted.
 * More than 1 % is questioned (a convention).
 *
 * @param horizontal metres per pixel along the image's rows
 * @param vertical metres per pixel along its columns
 * @returns the sentence to show, or null where they agree
 * @source one scale fits both directions of a level view; 1 %: convention
 */
export function scalesDiffer(horizontal: number, vertical: number): string | null {
  const share = Math.abs(horizontal - vertical) / ((horizontal + vertical) / 2);
  if (!(share > 0.01)) return null;
  return `The horizontal and the vertical scale differ by ${(100 * share).toFixed(1)} %: stretched pixels or a tilted camera. Use four points of a plane instead.`;
}
