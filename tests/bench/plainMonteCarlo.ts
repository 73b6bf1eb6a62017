interface Normal {
  readonly value: number;
  readonly u: number;
}

/**
 * Speed to score from distance, rise and angle, each normal, by a fixed number of draws, apart from the kernel: a
 * 32-bit xorshift, normals by the polar method, the closed form in a loop.
 */
export function plainMonteCarlo(d: Normal, rise: Normal, angle: Normal, draws: number) {
  let state = 0x9e3779b9;
  const uniform = () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
  let spare: number | null = null;
  const normal = () => {
    if (spare !== null) {
      const kept = spare;
      spare = null;
      return kept;
    }
    for (;;) {
      const [x, y] = [2 * uniform() - 1, 2 * uniform() - 1];
      const r = x * x + y * y;
      if (r >= 1 || r === 0) continue;
      const scale = Math.sqrt((-2 * Math.log(r)) / r);
      spare = y * scale;
      return x * scale;
    }
  };
  const speeds = new Float64Array(draws);
  for (let k = 0; k < draws; k += 1) {
    const [D, h, θ] = [d, rise, angle].map(({ value, u }) => value + u * normal()) as [number, number, number];
    speeds[k] = Math.sqrt((9.80665 * D * D) / (2 * Math.cos(θ) ** 2 * (D * Math.tan(θ) - h)));
  }
  speeds.sort();
  let [sum, squares] = [0, 0];
  for (const speed of speeds) sum += speed;
  const mean = sum / draws;
  for (const speed of speeds) squares += (speed - mean) ** 2;
  const at = (p: number) => speeds[Math.floor(p * (draws - 1))] as number;
  return { mean, sd: Math.sqrt(squares / (draws - 1)), interval: [at(0.025), at(0.975)] as const };
}
