import { standardGravity } from '../constants/standardGravity.ts';
import { launch, passing } from './path.ts';
import { airOf } from './release.ts';

/**
 * The release speed that takes a ball through a point at a given angle, as a plain number: in closed form in a vacuum,
 * else by the secant method on the height missed by.
 *
 * @param p d and Δh in m, θ in rad, k and l (drag and lift) per metre
 * @param similar a release already solved: its speed over the vacuum's is where the search begins; null: none
 * @param tolerance of the path, relative; within a hundred times as many metres it counts as passing
 * @returns m/s; NaN where no speed does it
 * @source constant acceleration; with drag see release.ts
 */
export function speedThrough(
  p: { readonly d: number; readonly Δh: number; readonly θ: number; readonly k: number; readonly l: number },
  similar: number | null = null,
  tolerance?: number,
): number {
  const vacuum = vacuumSpeed(p.d, p.Δh, p.θ);
  if ((p.k === 0 && p.l === 0) || Number.isNaN(vacuum)) return vacuum;
  const air = { ...airOf(p), ...(tolerance === undefined ? {} : { tolerance }) };
  const within = tolerance === undefined ? 1e-10 : 100 * tolerance;
  const missedBy = (v: number): number => (passing(launch(v, p.θ, 0), p.d, air)?.y ?? Number.NaN) - p.Δh;
  let before = similar === null ? vacuum : vacuum * similar * 1.001;
  let missedBefore = missedBy(before);
  let speed = vacuum * (similar ?? 1.05);
  for (let i = 0; i < 40; i += 1) {
    const missed = missedBy(speed);
    if (Math.abs(missed) < within) return speed;
    const next = speed - (missed * (speed - before)) / (missed - missedBefore);
    [before, missedBefore, speed] = [speed, missed, next];
    if (!(speed > 0)) return Number.NaN;
  }
  return Number.NaN;
}

function vacuumSpeed(d: number, Δh: number, θ: number): number {
  return Math.sqrt((standardGravity.value * d * d) / (2 * Math.cos(θ) ** 2 * (d * Math.tan(θ) - Δh)));
}
