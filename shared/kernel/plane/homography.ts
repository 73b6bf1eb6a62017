import { Matrix, SingularValueDecomposition } from 'ml-matrix';
import { DomainError } from '../../errors.ts';
import { centreOf, distance, type Point } from './point.ts';

/**
 * The projective map of the plane that takes each point of `from` to its partner in `to`: 2-D direct linear
 * transformation, least squares by singular values on normalised coordinates. Scaled so that the last element is 1.
 * Degenerate points (three of four in one line) give a map that means nothing: check the geometry first.
 *
 * @param from at least four points
 * @throws DomainError 'not-enough-data' with fewer than four pairs
 * @source Walton 1981 (from memory); normalising: Hartley 1997, IEEE Trans Pattern Anal 19(6):580-593 (from memory)
 */
export function homography(from: readonly Point[], to: readonly Point[]): Matrix {
  if (from.length < 4 || from.length !== to.length) {
    throw new DomainError(
      'not-enough-data',
      `homography needs at least four pairs of points, got ${from.length} and ${to.length}`,
    );
  }
  const nf = normaliser(from);
  const nt = normaliser(to);
  const rows: number[][] = [];
  from.forEach((f, i) => {
    const p = project(nf, f);
    const q = project(nt, to[i] as Point);
    rows.push([p.x, p.y, 1, 0, 0, 0, -q.x * p.x, -q.x * p.y, -q.x]);
    rows.push([0, 0, 0, p.x, p.y, 1, -q.y * p.x, -q.y * p.y, -q.y]);
  });
  // A zero row makes four points' 8 × 9 matrix square, so that the ninth right singular vector is there to take.
  while (rows.length < 9) rows.push(Array.from({ length: 9 }, () => 0));
  const v = new SingularValueDecomposition(new Matrix(rows)).rightSingularVectors.getColumn(8);
  const h = new Matrix([v.slice(0, 3), v.slice(3, 6), v.slice(6, 9)]);
  const map = invertNormaliser(nt).mmul(h).mmul(nf);
  return map.div(map.get(2, 2));
}

/** Moves the points' centre to 0 and their mean distance from it to √2 (Hartley), so that the solution is well conditioned. */
function normaliser(points: readonly Point[]): Matrix {
  const c = centreOf(points);
  const s = Math.SQRT2 / (points.reduce((sum, p) => sum + distance(p, c), 0) / points.length);
  return new Matrix([
    [s, 0, -s * c.x],
    [0, s, -s * c.y],
    [0, 0, 1],
  ]);
}

function invertNormaliser(n: Matrix): Matrix {
  const s = n.get(0, 0);
  return new Matrix([
    [1 / s, 0, -n.get(0, 2) / s],
    [0, 1 / s, -n.get(1, 2) / s],
    [0, 0, 1],
  ]);
}

/** Where the map takes a point. */
export function project(map: Matrix, point: Point): Point {
  const w = map.get(2, 0) * point.x + map.get(2, 1) * point.y + map.get(2, 2);
  return {
    x: (map.get(0, 0) * point.x + map.get(0, 1) * point.y + map.get(0, 2)) / w,
    y: (map.get(1, 0) * point.x + map.get(1, 1) * point.y + map.get(1, 2)) / w,
  };
}
