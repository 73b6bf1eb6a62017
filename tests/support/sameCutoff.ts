/**
 * The cut-off at which our filter equals one whose cut-off was divided by 0.802 before the tangent, as general signal
 * libraries are used: C = (√2 − 1)^¼ stands after the tangent in Winter 2009, 2.2.4.4. Hz.
 */
export function sameCutoff(cutoff: number, rate: number): number {
  const c = (Math.SQRT2 - 1) ** 0.25;
  return (Math.atan(Math.tan((Math.PI * cutoff) / (0.802 * rate)) * c) * rate) / Math.PI;
}
