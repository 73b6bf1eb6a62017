/**
 * A countermovement jump on force plates, worked out plainly and apart from the kernel: each window weighed anew, one
 * pass of the trapezoid rule, no uncertainty. To set beside analyseForceTrace in the same run.
 */
export function plainForce(plates: readonly (readonly number[])[], rateHz: number) {
  const g = 9.80665;
  const force = Float64Array.from(plates[0] ?? []);
  for (const plate of plates.slice(1))
    for (let i = 0; i < force.length; i += 1) force[i] = (force[i] as number) + (plate[i] as number);
  const takeoff = force.findIndex((f, i) => f < 20 && force.slice(i, i + rateHz * 0.15).every((later) => later < 20));
  const landing = force.findIndex((f, i) => i > takeoff && f >= 20);

  let best = { mean: 0, sd: Number.POSITIVE_INFINITY, end: 0 };
  for (let start = 0; start + rateHz <= takeoff - 0.3 * rateHz; start += rateHz / 100) {
    let [sum, squares] = [0, 0];
    for (let i = start; i < start + rateHz; i += 1) sum += force[i] as number;
    const mean = sum / rateHz;
    for (let i = start; i < start + rateHz; i += 1) squares += ((force[i] as number) - mean) ** 2;
    const sd = Math.sqrt(squares / (rateHz - 1));
    if (sd < best.sd) best = { mean, sd, end: start + rateHz };
  }
  const moves = (i: number) => Math.abs((force[i] as number) - best.mean) > 5 * best.sd;
  let onset = best.end;
  while (!Array.from({ length: 0.03 * rateHz }, (_, k) => moves(onset + k)).every(Boolean)) onset += 1;
  onset = Math.max(best.end, onset - 0.03 * rateHz);

  const mass = best.mean / g;
  let [v, x, depth, peakPower] = [0, 0, 0, 0];
  for (let i = onset; i < takeoff; i += 1) {
    const a = ((force[i] as number) + (force[i + 1] as number)) / 2 / mass - g;
    const before = v;
    v += a / rateHz;
    x += (before + v) / 2 / rateHz;
    depth = Math.min(depth, x);
    peakPower = Math.max(peakPower, v * (force[i + 1] as number));
  }
  return { mass, height: (v * v) / (2 * g), flightTime: (landing - takeoff) / rateHz, depth: -depth, peakPower };
}
