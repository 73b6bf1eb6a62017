import type { Point } from '../demo/figure.ts';

/** What stands in the plane of the movement to measure by. */
export interface Furniture {
  readonly stick: { readonly from: Point; readonly to: Point; readonly lengthM: number };
  /** Places known in the plane, well apart. */
  readonly plane: readonly Point[];
}

/** A stick of 1 m on the floor and six marks, around what a camera sees from `left` to `right`. */
export function furnitureBetween(left: number, right: number): Furniture {
  const from = { x: left + 0.35, y: 0.06 };
  const marks = [0.3, 2.6].flatMap((y) => [left + 0.25, (left + right) / 2, right - 0.25].map((x) => ({ x, y })));
  return { stick: { from, to: { x: from.x + 1, y: from.y }, lengthM: 1 }, plane: marks };
}
