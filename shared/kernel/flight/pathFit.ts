import { Matrix, inverse, solve } from 'ml-matrix';
import { DomainError } from '../../errors.ts';
import type { FlightSample } from './fitRelease.ts';
import { advance, type Air } from './path.ts';

/** A path fitted to flight samples. */
export interface PathFit {
  readonly x0: number;
  readonly vx: number;
  readonly y0: number;
  readonly vy: number;
  readonly g: number;
  /** Standard errors for a coordinate error of 1 m. */
  readonly seX0: number;
  readonly seVx: number;
  readonly seY0: number;
  readonly seVy: number;
  readonly seG: number;
  /** The samples with what the air bent taken off. */
  readonly withoutAir: readonly FlightSample[];
  readonly rms: number;
  /** Standard deviation of one coordinate about the fit. */
  readonly scatter: number;
}

/**
 * A straight line in x and a parabola in y by least squares; with drag, the path's bend away from the parabola is
 * integrated from the current answer, taken off the samples, and the fit repeated until it stands still.
 *
 * @param samples s and m, times rising; at least as many as fitRelease needs
 * @param air drag factor k, /m
 * @param knownG m/s²; null: fitted too
 * @throws DomainError 'no-solution' if the fit with drag does not settle
 * @source free flight; least squares
 */
export function pathFit(samples: readonly FlightSample[], air: Air, knownG: number | null): PathFit {
  const n = samples.length;
  const across = new Matrix(samples.map(({ t }) => [1, t]));
  const up = new Matrix(samples.map(({ t }) => (knownG === null ? [1, t, (-t * t) / 2] : [1, t])));
  // How far drag bends the path away from the parabola at each sample, from the answer so far.
  let bend = samples.map(() => ({ x: 0, y: 0 }));
  let before = Number.POSITIVE_INFINITY;
  for (let pass = 0; pass < 50; pass += 1) {
    const [x0 = 0, vx = 0] = leastSquares(
      across,
      samples.map(({ x }, i) => x - (bend[i]?.x ?? 0)),
    );
    const heights = samples.map(({ t, y }, i) => y - (bend[i]?.y ?? 0) + (knownG === null ? 0 : (knownG * t * t) / 2));
    const [y0 = 0, vy = 0, fittedG = 0] = leastSquares(up, heights);
    const g = knownG ?? fittedG;
    const start = { t: 0, x: x0, y: y0, vx, vy };
    const isVacuum = air.drag === 0;
    if (isVacuum || Math.abs(Math.hypot(vx, vy) - before) < 1e-11) {
      const withoutAir = samples.map(({ t, x, y }, i) => ({ t, x: x - (bend[i]?.x ?? 0), y: y - (bend[i]?.y ?? 0) }));
      const squares = withoutAir.reduce((sum, { t, x, y }) => {
        const dx = x - x0 - vx * t;
        const dy = y - y0 - vy * t + (g * t * t) / 2;
        return sum + dx * dx + dy * dy;
      }, 0);
      const [seX0 = 0, seVx = 0] = standardErrors(across);
      const [seY0 = 0, seVy = 0, seG = 0] = standardErrors(up);
      const freedom = 2 * n - across.columns - up.columns;
      return {
        x0,
        vx,
        y0,
        vy,
        g,
        seX0,
        seVx,
        seY0,
        seVy,
        seG,
        withoutAir,
        rms: Math.sqrt(squares / (2 * n)),
        scatter: Math.sqrt(squares / freedom),
      };
    }
    before = Math.hypot(vx, vy);
    bend = samples.map(({ t }) => {
      const state = advance(start, t, air, g);
      return { x: state.x - x0 - vx * t, y: state.y - y0 - vy * t + (g * t * t) / 2 };
    });
  }
  throw new DomainError(
    'no-solution',
    'fitRelease did not settle on a flight with drag: check the drag factor and the units',
  );
}

/** Of each parameter, for observations with a standard deviation of 1. */
function standardErrors(design: Matrix): number[] {
  return inverse(design.transpose().mmul(design)).diagonal().map(Math.sqrt);
}

function leastSquares(design: Matrix, right: readonly number[]): number[] {
  return solve(design, Matrix.columnVector([...right])).to1DArray();
}
