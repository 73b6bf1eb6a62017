import { DomainError } from '../../errors.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { Solver } from './odexSolver.js';

/** Where a ball is and how it moves: seconds since release, metres, metres a second; x towards the target, y up. */
export interface State {
  readonly t: number;
  readonly x: number;
  readonly y: number;
  readonly vx: number;
  readonly vy: number;
}

/** What the air does, per metre: k = ρ C A/(2m) for drag and for lift by backspin (lift positive: pushes up). */
export interface Air {
  readonly drag: number;
  readonly lift: number;
  /** How exact the path must be, relative; as exact as it can be unless given. Random draws need less. */
  readonly tolerance?: number;
}

export const VACUUM: Air = { drag: 0, lift: 0 };

const G = standardGravity.value;
/** Tighter than any measurement by six orders; costs about a dozen steps for a throw. */
const TOLERANCE = 1e-11;
/** No ball on Earth stays up longer. */
const LONGEST_S = 60;

/** The state at release: speed m/s, angle rad above the horizontal, height m. */
export function launch(speed: number, angle: number, height: number): State {
  return { t: 0, x: 0, y: height, vx: speed * Math.cos(angle), vy: speed * Math.sin(angle) };
}

/**
 * The state `dt` seconds later (or earlier): in closed form in a vacuum; with air by ODEX, an adaptive extrapolation
 * method, from dv/dt = −g ŷ − k |v| v + l |v| (v turned a quarter left).
 * @throws DomainError 'no-solution' if the integrator gives up
 */
export function advance(state: State, dt: number, air: Air, g = G): State {
  const { t, x, y, vx, vy } = state;
  if (air.drag === 0 && air.lift === 0) {
    return { t: t + dt, x: x + vx * dt, y: y + vy * dt - (g * dt * dt) / 2, vx, vy: vy - g * dt };
  }
  // The integrator cannot choose a step inside an interval of nearly no length.
  if (Math.abs(dt) < 1e-12) return state;
  const solver = new Solver(4);
  solver.absoluteTolerance = air.tolerance ?? TOLERANCE;
  solver.relativeTolerance = air.tolerance ?? TOLERANCE;
  // A ball's path is so smooth that half the way is often one step; beginning small would waste most of the work.
  solver.initialStepSize = Math.abs(dt) / 2;
  const solution = solver.solve(
    (_, [, , u = 0, w = 0]) => {
      const speed = Math.hypot(u, w);
      return [u, w, -speed * (air.drag * u + air.lift * w), -g - speed * (air.drag * w - air.lift * u)];
    },
    0,
    [x, y, vx, vy],
    dt,
  );
  const [x1 = Number.NaN, y1 = Number.NaN, vx1 = Number.NaN, vy1 = Number.NaN] = solution.y;
  if (solution.outcome !== 0 || ![x1, y1, vx1, vy1].every(Number.isFinite)) {
    throw new DomainError('no-solution', `advance found no path over ${dt} s from ${vx} and ${vy} m/s`);
  }
  return { t: t + dt, x: x1, y: y1, vx: vx1, vy: vy1 };
}

/** Newton's method along the path: moves by `step` until it is nothing. Null where it does not settle. */
function settle(from: State, air: Air, step: (state: State) => number): State | null {
  let state = from;
  for (let i = 0; i < 60; i += 1) {
    const dt = step(state);
    if (!Number.isFinite(dt) || state.t + dt > LONGEST_S) return null;
    state = advance(state, dt, air);
    if (Math.abs(dt) < (air.tolerance ?? TOLERANCE)) return state;
  }
  return null;
}

/** The highest point; the release itself for a ball thrown level or downwards. */
export function highest(from: State, air: Air): State {
  if (from.vy <= 0) return from;
  const top = settle(from, air, ({ vx, vy }) => {
    const speed = Math.hypot(vx, vy);
    return vy / (G + speed * (air.drag * vy - air.lift * vx));
  });
  return top ?? from;
}

/**
 * The state on the way down at height `y`; null if the ball never falls through it.
 * @param near s after release at which a similar ball is there: the search then starts from it
 */
export function falling(from: State, y: number, air: Air, near: number | null = null): State | null {
  if (near !== null) {
    const found = settle(advance(from, near, air), air, (state) => (y - state.y) / state.vy);
    if (found !== null && found.vy < 0 && found.t >= 0) return found;
  }
  const top = highest(from, air);
  if (top.y < y) return null;
  if (top.y === y) return top;
  const start = advance(top, Math.sqrt((2 * (top.y - y)) / G), air);
  return settle(start, air, (state) => (y - state.y) / state.vy);
}

/** The state as the ball passes the distance `x`, rising or falling; null if it never gets there. */
export function passing(from: State, x: number, air: Air): State | null {
  if (!(from.vx > 0) || x < from.x) return null;
  return settle(from, air, (state) => (x - state.x) / state.vx);
}
