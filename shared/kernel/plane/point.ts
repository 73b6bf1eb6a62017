/** A place in the plane of motion: x forward or rightward, y up, metres. In an image: pixels, y down. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Standard uncertainty of one coordinate, or the sentence that says why there is none. */
export type PointU = number | string;

/** Between two points, in their unit. */
export function distance(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** The mean of some points; of two: the middle between them. */
export function centreOf(points: readonly Point[]): Point {
  return {
    x: points.reduce((sum, p) => sum + p.x, 0) / points.length,
    y: points.reduce((sum, p) => sum + p.y, 0) / points.length,
  };
}
