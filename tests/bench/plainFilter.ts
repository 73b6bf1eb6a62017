/**
 * Zero-lag low-pass and both derivatives, apart from the kernel: the analogue prototype by the bilinear transform with
 * complex poles, direct form II transposed, state set for a constant, odd padding of nine samples as SciPy's filtfilt does.
 */
export function plainFilter(samples: Float64Array, rateHz: number, cutoffHz: number) {
  // Warped cut-off, widened for two passes as in Winter 2009: Ω / (√2 − 1)^¼.
  const warped = (2 * rateHz * Math.tan((Math.PI * cutoffHz) / rateHz)) / (Math.SQRT2 - 1) ** 0.25;
  // Poles at warped · e^{±3πi/4}, mapped by z = (2 fs + s)/(2 fs − s).
  const [re, im] = [-warped * Math.SQRT1_2, warped * Math.SQRT1_2];
  const norm = (2 * rateHz - re) ** 2 + im ** 2;
  const zRe = ((2 * rateHz) ** 2 - re ** 2 - im ** 2) / norm;
  const zIm = (4 * rateHz * im) / norm;
  const a = [1, -2 * zRe, zRe ** 2 + zIm ** 2] as const;
  const gain = (a[0] + a[1] + a[2]) / 4;

  const n = samples.length;
  const pad = 9;
  const padded = new Float64Array(n + 2 * pad);
  padded.set(samples, pad);
  for (let i = 0; i < pad; i += 1) {
    padded[pad - 1 - i] = 2 * (samples[0] as number) - (samples[i + 1] as number);
    padded[pad + n + i] = 2 * (samples[n - 1] as number) - (samples[n - 2 - i] as number);
  }
  const pass = () => {
    let s1 = (1 - gain) * (padded[0] as number);
    let s2 = (gain - a[2]) * (padded[0] as number);
    for (let i = 0; i < padded.length; i += 1) {
      const x = padded[i] as number;
      const y = gain * x + s1;
      s1 = 2 * gain * x - a[1] * y + s2;
      s2 = gain * x - a[2] * y;
      padded[i] = y;
    }
    padded.reverse();
  };
  pass();
  pass();
  const smooth = padded.subarray(pad, pad + n);
  const velocity = new Float64Array(n).fill(Number.NaN);
  const acceleration = new Float64Array(n).fill(Number.NaN);
  for (let i = 1; i < n - 1; i += 1) {
    const [before, here, after] = [smooth[i - 1] as number, smooth[i] as number, smooth[i + 1] as number];
    velocity[i] = ((after - before) * rateHz) / 2;
    acceleration[i] = (after - 2 * here + before) * rateHz * rateHz;
  }
  return { smooth, velocity, acceleration };
}
