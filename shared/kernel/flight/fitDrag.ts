import { inverse, Matrix, solve } from 'ml-matrix';
import { measured, type Reading } from '../../quantity.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import type { PointU } from '../plane/point.ts';
import { derive } from '../quantity/derive.ts';
import { type FitOptions, type FlightSample, refuseUnusableFlight } from './fitRelease.ts';
import { ownU } from './ownU.ts';
import { advance, type State, VACUUM } from './path.ts';
import { pathFit } from './pathFit.ts';

/** By which each of place, velocity and drag is changed to see what it does to the path, SI. */
const NUDGE = 1e-5;
/** No ball in play is slowed more than this, /m: a convention, ten times a volleyball's. */
const MOST = 0.5;

/**
 * The drag factor that a flight itself shows, k of a = −k v², with standard gravity: the k for which the squared
 * distances of the samples from the path are least. Most clips are too short for it; where k is not clear of zero by
 * two standard uncertainties the answer is unknown, with the numbers.
 *
 * Uncertainty: from the normal equations, with the larger of the digitising uncertainty and the scatter; and what
 * the scale's uncertainty changes, because a wrong scale looks like drag.
 *
 * @param samples at least six, times strictly rising, s and m
 * @param pointU standard uncertainty of one coordinate, m, or why there is none (then the scatter alone counts)
 * @param options as for fitRelease; a scale whose uncertainty is absent or a reason: not counted
 * @returns /m, > 0
 * @throws DomainError as fitRelease
 * @source least squares by Gauss and Newton; uncertainty from the normal equations (JCGM 100:2008, H.3)
 */
export function fitDrag(
  samples: readonly FlightSample[],
  pointU: PointU,
  { scaleU, sharedU }: Pick<FitOptions, 'scaleU' | 'sharedU'> = {},
): Reading<'/m'> {
  refuseUnusableFlight('fitDrag', samples);
  const start = (samples[0] as FlightSample).t;
  const fitted = best(samples.map(({ t, x, y }) => ({ t: t - start, x, y })));
  if (fitted === null) return { unknown: 'no drag that a ball can have lets the path fit' };
  const { k, se, scatter } = fitted;
  const sigma = Math.max(ownU(pointU, sharedU), scatter);
  const longer = typeof scaleU === 'number' && scaleU > 0 ? 1 + scaleU : 1;
  const scaled =
    longer === 1 ? fitted : best(samples.map(({ t, x, y }) => ({ t: t - start, x: longer * x, y: longer * y })));
  const byScale = scaled === null ? null : Math.abs(scaled.k - k);
  const found = derive(
    {
      symbol: 'k',
      name: 'Drag factor found',
      unit: '/m',
      formula: 'k = k_f + δ_s',
      variant: 'from the flight itself, g taken as standard; δ_s: what one standard uncertainty of the scale changes',
      source: { cite: 'Least squares on the path of the ball (JCGM 100:2008, H.3)', status: 'derived' },
    },
    {
      k_f: measured('k_f', 'Drag factor fitted', k, '/m', sigma * se),
      δ_s: measured('δ_s', 'Change with the scale', 0, '/m', byScale ?? 'no drag fits with the scale a little longer'),
    },
    ({ k_f, δ_s }) => k_f + δ_s,
  );
  const u = found.u ?? Number.POSITIVE_INFINITY;
  if (k > 2 * u) return found;
  const plusMinus = Number.isFinite(u) ? `${k.toFixed(4)} ± ${u.toFixed(4)} /m` : `${k.toFixed(4)} /m`;
  return { unknown: `this flight cannot tell drag from none: it shows ${plusMinus}` };
}

interface DragFit {
  readonly k: number;
  /** Standard error of k for a coordinate error of 1 m. */
  readonly se: number;
  /** Standard deviation of one coordinate about the fit. */
  readonly scatter: number;
}

/** Gauss-Newton in place and velocity at the first sample and in k, from the parabola on; null if it runs away. */
function best(samples: readonly FlightSample[]): DragFit | null {
  const first = pathFit(samples, VACUUM, standardGravity.value);
  let p = [first.x0, first.y0, first.vx, first.vy, 0];
  for (let i = 0; i < 20; i += 1) {
    const here = pathAt(p, samples);
    const off = samples.flatMap(({ x, y }, n) => [x - (here[2 * n] as number), y - (here[2 * n + 1] as number)]);
    const changes = p.map((_, j) => {
      const nearby = pathAt(p.with(j, (p[j] as number) + NUDGE), samples);
      return nearby.map((value, n) => (value - (here[n] as number)) / NUDGE);
    });
    const jacobian = new Matrix(changes).transpose();
    const normal = jacobian.transpose().mmul(jacobian);
    const move = solve(normal, jacobian.transpose().mmul(Matrix.columnVector(off))).to1DArray();
    p = p.map((value, j) => value + (move[j] as number));
    const k = p[4] as number;
    if (!(Math.abs(k) <= MOST)) return null;
    if (Math.abs(move[4] as number) < 1e-9) {
      const se = Math.sqrt(inverse(normal).get(4, 4));
      return { k, se, scatter: Math.hypot(...off) / Math.sqrt(off.length - p.length) };
    }
  }
  return null;
}

/** x and y in turn at every sample, integrated from one to the next. */
function pathAt(
  [x = 0, y = 0, vx = 0, vy = 0, drag = 0]: readonly number[],
  samples: readonly FlightSample[],
): number[] {
  let state: State = { t: 0, x, y, vx, vy };
  return samples.flatMap(({ t }) => {
    state = advance(state, t - state.t, { drag, lift: 0, tolerance: 1e-10 });
    return [state.x, state.y];
  });
}
