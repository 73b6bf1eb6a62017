export type Curve = (t: number) => number;

/** Place, velocity and acceleration at an instant. */
export interface State {
  readonly t: number;
  readonly x: number;
  readonly v: number;
  readonly a: number;
}

/** At rest at an instant. */
export function still(t: number, x: number): State {
  return { t, x, v: 0, a: 0 };
}

/** The two neighbours of an instant, or the outermost two. */
function neighbours<T>(
  points: readonly T[],
  timeOf: (point: T) => number,
  t: number,
): { from: T; to: T; index: number } {
  const after = points.findIndex((point) => timeOf(point) > t);
  const index = Math.min(points.length - 2, Math.max(0, (after < 0 ? points.length : after) - 1));
  const [from, to] = points.slice(index);
  if (from === undefined || to === undefined) throw new Error('a curve needs two points');
  return { from, to, index };
}

/** Motion through given states: between two of them the polynomial of fifth degree, which matches all six values. */
export function motionThrough(states: readonly State[]): (t: number) => State {
  return (t) => {
    const { from, to } = neighbours(states, (state) => state.t, t);
    const T = to.t - from.t;
    const s = Math.min(1, Math.max(0, (t - from.t) / T));
    const [x0, v0, a0] = [from.x, from.v * T, from.a * T * T];
    const [x1, v1, a1] = [to.x, to.v * T, to.a * T * T];
    const c3 = 10 * (x1 - x0) - 6 * v0 - 4 * v1 - 1.5 * a0 + 0.5 * a1;
    const c4 = -15 * (x1 - x0) + 8 * v0 + 7 * v1 + 1.5 * a0 - a1;
    const c5 = 6 * (x1 - x0) - 3 * v0 - 3 * v1 - 0.5 * a0 + 0.5 * a1;
    return {
      t,
      x: x0 + s * (v0 + s * (a0 / 2 + s * (c3 + s * (c4 + s * c5)))),
      v: (v0 + s * (a0 + s * (3 * c3 + s * (4 * c4 + s * 5 * c5)))) / T,
      a: (a0 + s * (6 * c3 + s * (12 * c4 + s * 20 * c5))) / T ** 2,
    };
  };
}

/** Value through given points without overshoot: monotone cubic, Fritsch & Carlson 1980, SIAM J Numer Anal 17:238. */
export function curveThrough(points: readonly (readonly [t: number, x: number])[]): Curve {
  const slopes = points.slice(1).map(([t, x], i) => {
    const [t0, x0] = points[i] ?? [t, x];
    return (x - x0) / (t - t0);
  });
  // Harmonic mean of the slopes beside a point; level where they turn and at the ends.
  const tangents = points.map((_, i) => {
    const [before = 0, after = 0] = [slopes[i - 1], slopes[i]];
    return before * after <= 0 ? 0 : (2 * before * after) / (before + after);
  });
  return (t) => {
    const { from, to, index } = neighbours(points, ([time]) => time, t);
    const T = to[0] - from[0];
    const s = Math.min(1, Math.max(0, (t - from[0]) / T));
    const [m0 = 0, m1 = 0] = [tangents[index], tangents[index + 1]];
    const ends = from[1] * (1 + 2 * s) * (1 - s) ** 2 + to[1] * s * s * (3 - 2 * s);
    return ends + m0 * T * s * (1 - s) ** 2 - m1 * T * s * s * (1 - s);
  };
}

/** The same, its points one by one. */
export function curve(...points: (readonly [t: number, x: number])[]): Curve {
  return curveThrough(points);
}
