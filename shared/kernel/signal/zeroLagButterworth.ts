import { butterworthCoefficients, type SecondOrderFilter } from './butterworthCoefficients.ts';
import { refuseUnusable } from './refuseUnusable.ts';

/**
 * Low-pass filter without delay: a second-order Butterworth run forwards, then backwards (fourth order in all), with
 * the dual-pass correction, so that the gain at `cutoffHz` is 0.7071.
 *
 * The straight line from the first to the last sample is set aside and put back afterwards, so that a constant and a
 * straight line come out exactly as they went in. What remains is continued at both ends by point reflection (odd
 * padding): nine samples, as general signal libraries do for this order, or half a cut-off period where that is more.
 *
 * @param samples evenly spaced, finite, at least 4
 * @param rateHz samples a second
 * @param cutoffHz 0 < fc < fs/2
 * @returns as many samples, same unit
 * @throws DomainError 'not-enough-data', 'input-out-of-range'
 * @source Winter 2009, 2.2.4.4
 */
export function zeroLagButterworth(samples: readonly number[], rateHz: number, cutoffHz: number): number[] {
  refuseUnusable('zeroLagButterworth', samples, 4);
  const filter = butterworthCoefficients(cutoffHz, rateHz, 2);
  const n = samples.length;
  const origin = samples[0] as number;
  const slope = ((samples[n - 1] as number) - origin) / (n - 1);
  const pad = Math.min(n - 1, Math.max(9, Math.ceil(rateHz / (2 * cutoffHz))));
  const padded = new Float64Array(n + 2 * pad);
  samples.forEach((x, i) => {
    padded[pad + i] = x - origin - slope * i;
  });
  // Both ends of what remains are 0, so the reflection only changes sign.
  for (let i = 1; i <= pad; i += 1) {
    padded[pad - i] = -(padded[pad + i] as number);
    padded[pad + n - 1 + i] = -(padded[pad + n - 1 - i] as number);
  }
  onePass(padded, filter);
  padded.reverse();
  onePass(padded, filter);
  padded.reverse();
  return samples.map((_, i) => (padded[pad + i] as number) + origin + slope * i);
}

/** One pass in place, begun as if the first sample had lasted for ever. */
function onePass(samples: Float64Array, { a0, a1, a2, b1, b2 }: SecondOrderFilter): void {
  let x1 = samples[0] as number;
  let [x2, y1, y2] = [x1, x1, x1];
  for (let i = 0; i < samples.length; i += 1) {
    const x = samples[i] as number;
    const y = a0 * x + a1 * x1 + a2 * x2 + b1 * y1 + b2 * y2;
    x2 = x1;
    x1 = x;
    y2 = y1;
    y1 = y;
    samples[i] = y;
  }
}
